// SPDX-License-Identifier: GPL-3.0-or-later
#include "growth/grown_book.h"

#include "basics/sha256.h"
#include "store/book_file.h"
#include "store/row_loading.h"
#include "store/transaction.h"

#include <algorithm>
#include <cstdio>

namespace miterbook {

namespace {

/// Rows below each house's own plan, written as the store writes them but past the journal.
class HouseFiller {
public:
    HouseFiller(Connection& connection, const Grown& grown, std::int64_t firstId)
        : m_connection(connection)
        , m_grown(grown)
        , m_ids(firstId) {}

    Result<void> addBuilders() {
        for (int n = 0; n < m_grown.builders; ++n) {
            Builder builder;
            builder.id = m_ids.next<Builder>();
            builder.name = "Builder " + std::to_string(n);
            m_builders.push_back(builder.id);
            if (auto put = insert(builder); !put)
                return put;
        }
        return {};
    }

    Result<void> fill(const House& house) {
        Level level;
        level.id = m_ids.next<Level>();
        level.plan = house.work;
        level.name = "Main";
        if (auto put = insert(level); !put)
            return put;
        for (int n = 0; n < m_grown.openingsPerHouse; ++n) {
            if (auto put = addOpening(house.work, level.id, n); !put)
                return put;
        }
        if (auto put = addContract(house); !put)
            return put;
        for (int n = 0; n < m_grown.invoicesPerHouse; ++n) {
            if (auto put = addInvoice(house, n); !put)
                return put;
        }
        return {};
    }

private:
    template <class Row>
    Result<void> insert(const Row& row) {
        return TableStore(m_connection, kindOf<Row>).insert(row);
    }

    Result<void> addOpening(Id<Plan> plan, Id<Level> level, int n) {
        Opening opening;
        opening.id = m_ids.next<Opening>();
        opening.plan = plan;
        opening.level = level;
        opening.mark = (n % 2 == 0 ? "W" : "D") + std::to_string(n);
        opening.width = Length::inches(24 + n % 48);
        opening.height = Length::inches(36 + n % 50);
        return insert(opening);
    }

    Id<Builder> builderOf(const House& house) const {
        return m_builders[static_cast<std::size_t>(house.id.value()) % m_builders.size()];
    }

    Result<void> addContract(const House& house) {
        Contract contract;
        contract.id = m_ids.next<Contract>();
        contract.house = house.id;
        contract.builder = builderOf(house);
        contract.date = house.started;
        for (const PieceOfWork work : {PieceOfWork::doors, PieceOfWork::windows, PieceOfWork::base,
                 PieceOfWork::crown, PieceOfWork::closets, PieceOfWork::stairs})
            contract.values.push_back({work, Money::dollars(1800), Percent::hundred()});
        return insert(contract);
    }

    /// Nine invoices in ten are paid, each by a payment of its own.
    Result<void> addPayment(const Invoice& invoice) {
        if (invoice.number % 10 == 0)
            return {};
        Payment payment;
        payment.id = m_ids.next<Payment>();
        payment.builder = invoice.builder;
        payment.date = addDays(invoice.date, 20);
        payment.amount = invoice.total();
        if (auto put = insert(payment); !put)
            return put;
        return insert(Allocation{m_ids.next<Allocation>(), payment.id, invoice.id, payment.amount});
    }

    Result<void> addInvoice(const House& house, int n) {
        IssuedPaper paper;
        paper.id = m_ids.next<IssuedPaper>();
        paper.plan = house.work;
        paper.kind = IssuedKind::invoice;
        paper.number = ++m_number;
        paper.date = addDays(house.started, n * 4);
        paper.amount = Money::dollars(1800);
        paper.paper.text = "{\"number\": " + std::to_string(m_number) + std::string(3000, ' ')
            + "}";
        paper.sum = sha256(paper.paper.text);
        if (auto put = insert(paper); !put)
            return put;
        Invoice invoice;
        invoice.id = m_ids.next<Invoice>();
        invoice.number = m_number;
        invoice.house = house.id;
        invoice.builder = builderOf(house);
        invoice.date = paper.date;
        invoice.due = addDays(paper.date, 30);
        invoice.work = paper.amount;
        invoice.paper = paper.id;
        if (auto put = insert(invoice); !put)
            return put;
        if (auto put = addPayment(invoice); !put)
            return put;
        InvoiceLine line;
        line.id = m_ids.next<InvoiceLine>();
        line.plan = house.work;
        line.invoice = invoice.id;
        line.label = "Doors";
        return insert(line);
    }

    Connection& m_connection;
    const Grown& m_grown;
    IdSource m_ids;
    std::vector<Id<Builder>> m_builders;
    int m_number = 0;
};

Result<void> fillHouses(const std::string& path, const Grown& grown) {
    auto connection = Connection::open(path, Access::readWrite);
    if (!connection)
        return connection.error();
    const auto houses = loadTable<House>(**connection, RowsAsked::all());
    if (!houses)
        return houses.error();
    Transaction transaction(**connection);
    if (auto begun = transaction.begin(); !begun)
        return begun;
    constexpr std::int64_t firstId = 10'000'000;
    HouseFiller filler(**connection, grown, firstId);
    if (auto added = filler.addBuilders(); !added)
        return added;
    for (const auto& [id, house] : *houses) {
        if (auto filled = filler.fill(house); !filled)
            return filled;
    }
    return transaction.commit();
}

} // namespace

bool makeGrownBook(const std::string& path, const Grown& grown) {
    if (!makeTenYearBook(path, grown.years))
        return false;
    const auto filled = fillHouses(path, grown);
    if (!filled)
        std::fprintf(stderr, "%s\n", filled.error().sentence.c_str());
    return filled.ok();
}

} // namespace miterbook
