// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/ten_year_book.h"

#include "book/starter_book.h"
#include "store/book_file.h"

#include <sqlite3.h>

#include <cstdio>
#include <random>

namespace miterbook {

namespace {

constexpr std::int64_t firstPlan = 100'000;
constexpr std::int64_t firstHouse = 200'000;
constexpr std::int64_t firstWork = 300'000;
constexpr std::int64_t firstBid = 400'000;
constexpr std::int64_t firstEntry = 1'000'000;

constexpr std::pair<const char*, const char*> tasks[] = {{"doors", "prehung door"},
    {"doors", "bifold or bypass door"}, {"doors", "cased opening"},
    {"windows", "window, picture frame"}, {"windows", "jamb extension"},
    {"base", "base, one piece"}, {"base", "shoe or quarter round"}, {"crown", "crown to 3 1/2"},
    {"closets", "shelf and rod"}, {"closets", "pantry or linen shelf"},
    {"stairs", "treads and risers"}, {"stairs", "baluster"}, {"hardware", "passage or privacy set"},
    {"hardware", "door stop"}};

/// One statement used again and again.
class RawInsert {
public:
    RawInsert(sqlite3* handle, const char* sql) {
        sqlite3_prepare_v2(handle, sql, -1, &m_statement, nullptr);
    }
    ~RawInsert() { sqlite3_finalize(m_statement); }
    RawInsert(const RawInsert&) = delete;
    RawInsert& operator=(const RawInsert&) = delete;

    RawInsert& number(std::int64_t value) {
        sqlite3_bind_int64(m_statement, ++m_at, value);
        return *this;
    }
    RawInsert& text(const std::string& value) {
        sqlite3_bind_text(m_statement, ++m_at, value.c_str(), -1, SQLITE_TRANSIENT);
        return *this;
    }
    bool run() {
        const bool done = sqlite3_step(m_statement) == SQLITE_DONE;
        sqlite3_reset(m_statement);
        m_at = 0;
        return done;
    }

private:
    sqlite3_stmt* m_statement = nullptr;
    int m_at = 0;
};

Date dayOf(int n) {
    return addDays(Date{std::chrono::year(2016), std::chrono::month(1), std::chrono::day(4)}, n);
}

int startOf(int house, const TenYears& years) {
    return house * 3600 / years.houses;
}

/// Bids as won and time entries, past the journal.
class BidAndTimeWriter {
public:
    BidAndTimeWriter(sqlite3* handle, const TenYears& years, std::int64_t person)
        : m_years(years)
        , m_person(person)
        , m_soldWork(handle, "INSERT INTO sold_work VALUES (?, ?, ?, ?, ?, ?, ?, ?)")
        , m_soldTask(handle, "INSERT INTO sold_task VALUES (?, ?, ?, ?, '', 10000, ?, ?)")
        , m_entry(handle, "INSERT INTO time_entry VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, '')") {}

    bool write(int n) {
        const std::int64_t work = firstWork + n;
        bool done = true;
        std::string before;
        for (const auto& [piece, task] : tasks) {
            const std::int64_t minutes = 300 + static_cast<std::int64_t>(m_random() % 600);
            const std::int64_t id = firstBid + ++m_bids;
            m_soldTask.number(id).number(work).text(piece).text(task).number(10'000).number(
                minutes);
            done = m_soldTask.run() && done;
            if (before == piece)
                continue;
            before = piece;
            m_soldWork.number(id).number(work).text(piece).number(minutes * 2);
            m_soldWork.number(minutes * 160)
                .number(20'000)
                .number(minutes * 220)
                .number(minutes * 280);
            done = m_soldWork.run() && done;
        }
        for (int i = 0; i < m_years.entriesPerHouse; ++i)
            done = writeEntry(firstHouse + n, startOf(n, m_years) + i / 12) && done;
        return done;
    }

private:
    bool writeEntry(std::int64_t house, int day) {
        const auto& [piece, task] = tasks[m_random() % std::size(tasks)];
        const bool named = m_random() % 8 == 0;
        const unsigned kind = static_cast<unsigned>(m_random() % 40);
        m_entry.number(firstEntry + ++m_entries).text(isoDate(dayOf(day))).number(m_person);
        m_entry.number(house).text(piece).text(named ? task : "other work");
        m_entry.text(kind == 0 ? "callback" : kind < 3 ? "travel" : "work");
        m_entry.number(15 * (1 + static_cast<std::int64_t>(m_random() % 12)));
        return m_entry.number(named ? 0 : 1000).run();
    }

    const TenYears& m_years;
    std::int64_t m_person;
    RawInsert m_soldWork;
    RawInsert m_soldTask;
    RawInsert m_entry;
    std::mt19937 m_random{20'260};
    std::int64_t m_bids = 0;
    std::int64_t m_entries = 0;
};

/// Plans and houses, which are few, are written by the store.
Book bookOfHouses(const TenYears& years) {
    IdSource ids(10);
    Book book;
    book.prices = starterBook(ids);
    const auto addPlan = [&](std::int64_t id, Id<House> house) {
        Plan plan;
        plan.id = Id<Plan>(id);
        plan.house = house;
        plan.name = "Plan " + std::to_string(id);
        book.jobs.of<Plan>().put(plan);
    };
    for (int n = 0; n < years.plans; ++n)
        addPlan(firstPlan + n, {});
    for (int n = 0; n < years.houses; ++n) {
        House house;
        house.id = Id<House>(firstHouse + n);
        house.plan = Id<Plan>(firstPlan + n % years.plans);
        house.work = Id<Plan>(firstWork + n);
        house.name = "Lot " + std::to_string(n);
        house.stage = HouseStage::paid;
        house.started = dayOf(startOf(n, years));
        house.finished = addDays(house.started, 20);
        book.jobs.of<House>().put(house);
        addPlan(firstWork + n, house.id);
    }
    return book;
}

bool writeTime(const std::string& path, const TenYears& years, std::int64_t person) {
    sqlite3* handle = nullptr;
    bool done = sqlite3_open(path.c_str(), &handle) == SQLITE_OK
        && sqlite3_exec(handle, "BEGIN", nullptr, nullptr, nullptr) == SQLITE_OK;
    if (done) {
        BidAndTimeWriter writer(handle, years, person);
        for (int n = 0; n < years.houses; ++n)
            done = writer.write(n) && done;
    }
    done = done && sqlite3_exec(handle, "COMMIT", nullptr, nullptr, nullptr) == SQLITE_OK;
    if (!done)
        std::fprintf(stderr, "%s\n", sqlite3_errmsg(handle));
    sqlite3_close(handle);
    return done;
}

} // namespace

bool makeTenYearBook(const std::string& path, const TenYears& years) {
    const Book book = bookOfHouses(years);
    auto made = createBook(path, book);
    if (!made) {
        std::fprintf(stderr, "%s\n", made.error().sentence.c_str());
        return false;
    }
    made->reset();
    return writeTime(path, years, book.prices.of<CrewMember>().begin()->first.value());
}

} // namespace miterbook
