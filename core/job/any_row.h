// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/one_of.h"
#include "job/book.h"

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <memory>
#include <optional>
#include <string_view>
#include <utility>

namespace miterbook {

struct RowShape;

/// Stands for a kind of row where a value is needed.
template <class T>
struct RowKind {
    using Row = T;
};

/// A list of kinds of row.
template <class... Rows>
struct RowKinds {
    static constexpr std::size_t count = sizeof...(Rows);
    template <class Row>
    static constexpr bool has = isOneOf<Row, Rows...>;

    /// The place of a kind in the list.
    template <class Row>
    static constexpr std::size_t place() {
        constexpr std::array<bool, count> same{std::is_same_v<Row, Rows>...};
        return static_cast<std::size_t>(std::ranges::find(same, true) - same.begin());
    }
    /// Calls fn(RowKind<Row>) for each kind, in order.
    template <class Fn>
    static void forEach(Fn&& fn) {
        (fn(RowKind<Rows>()), ...);
    }
    /// fn(RowKind<Row>) of each kind, in order; all of one type.
    template <class Fn>
    static constexpr auto mapped(Fn fn) {
        return std::array{fn(RowKind<Rows>())...};
    }
};

/// Every kind of row that a book has.
using BookRows = RowKinds<Shop, Practice, Terms, Builder, Profile, Stick, StickPrice, Offcut, Part,
    Consumable, LabourRate, Factor, PiecePrice, CrewMember, Burden, HeaderName, Logo, PlanSet, Plan,
    House, BidSetup, Scenario, Variant, Swap, Level, Room, Opening, Closet, Stair, WallTreatment,
    OtherWork, SheetFile, Underlay, Dismissal, Bench, Measure, CutPiece, SawTest, RackMove, SawSpot,
    PlanTie, TimeEntry, Timer, WorkDone, WeekApproval, PayTerms, CrewPay, PieceRate, SoldWork,
    SoldTask, BillingSetup, BillingTerms, Contract, Extra, Backcharge, IssuedPaper, SentBid,
    Invoice, InvoiceVoid, Payment, Allocation, Reminder, HouseDate, ExtraLine, InvoiceLine,
    Attachment>;

template <class Row>
concept BookRow = BookRows::has<Row>;

/// A kind of row as a number: its place in BookRows.
template <BookRow Row>
inline constexpr std::size_t kindOf = BookRows::place<Row>();

/// Calls fn(RowKind<Row>) for every kind of row that a book has.
template <class Fn>
void forEachRowKind(Fn&& fn) {
    BookRows::forEach(fn);
}

/// Any row of the book: its kind and the row itself, which is shared with whoever has it and does
/// not change. What is done alike with rows of every kind is done by their shape, and so is
/// compiled once.
class AnyRow {
public:
    template <BookRow Row>
    AnyRow(Row row)
        : m_kind(kindOf<Row>)
        , m_id(row.id.value())
        , m_row(std::make_shared<const Row>(std::move(row))) {}
    /// The row must be of that kind and have that id.
    AnyRow(std::size_t kind, std::int64_t id, std::shared_ptr<const void> row)
        : m_kind(kind)
        , m_id(id)
        , m_row(std::move(row)) {}

    /// Place among BookRows.
    std::size_t kind() const { return m_kind; }
    std::int64_t id() const { return m_id; }
    template <BookRow Row>
    bool is() const {
        return m_kind == kindOf<Row>;
    }
    template <BookRow... Rows>
    bool isAnyOf() const {
        return (is<Rows>() || ...);
    }
    /// The row itself; nullptr when it is of another kind.
    template <BookRow Row>
    const Row* as() const {
        return is<Row>() ? static_cast<const Row*>(m_row.get()) : nullptr;
    }

    /// What it is made of, without its type.
    const RowShape& shape() const;
    /// The table of the book file, which names its kind.
    std::string_view table() const;
    /// What the user calls such a row: "opening".
    std::string_view noun() const;
    /// The row, to be read by its shape.
    const void* data() const { return m_row.get(); }
    const std::shared_ptr<const void>& shared() const { return m_row; }

    /// Whether both are of one kind and say the same.
    bool operator==(const AnyRow& other) const;

private:
    std::size_t m_kind;
    std::int64_t m_id;
    std::shared_ptr<const void> m_row;
};

/// The row of a side of a change; nullptr when it is not there or of another kind.
template <BookRow Row>
const Row* rowIn(const std::optional<AnyRow>& row) {
    return row ? row->as<Row>() : nullptr;
}

/// A row that is being read: written to by its shape, then taken as it is.
class RowDraft {
public:
    /// A new row of a kind, as by its default constructor.
    explicit RowDraft(std::size_t kind);

    const RowShape& shape() const;
    void* data() { return m_row.get(); }
    /// The draft has no row afterwards.
    AnyRow take() &&;

private:
    std::size_t m_kind;
    std::shared_ptr<void> m_row;
};

/// The kind of row that a table of the book file holds; nothing where there is no such table.
std::optional<std::size_t> kindOfTable(std::string_view table);

/// The shape of each kind of row, by its place in BookRows.
const std::array<const RowShape*, BookRows::count>& rowShapes();

template <BookRow Row>
const RowShape& shapeOf() {
    return *rowShapes()[kindOf<Row>];
}

/// The plan that a row belongs to, itself for a plan; none for rows of the shop and of houses.
Id<Plan> planOf(const AnyRow& row);

/// Calls fn(row) with the row as what it is. All kinds are compiled: for what differs by kind only.
template <class Fn>
auto visitRow(const AnyRow& row, Fn&& fn) {
    using Said = decltype(fn(std::declval<const Plan&>()));
    using Call = Said (*)(const void*, Fn&);
    static constexpr auto calls = BookRows::mapped([]<class Row>(RowKind<Row>) -> Call {
        return
            [](const void* data, Fn& each) -> Said { return each(*static_cast<const Row*>(data)); };
    });
    return calls[row.kind()](row.data(), fn);
}

/// Whether there is one row of this kind, of id 1.
template <class Row>
inline constexpr bool isSettings
    = isOneOf<Row, Shop, Practice, Terms, Bench, PayTerms, BillingSetup>;

} // namespace miterbook
