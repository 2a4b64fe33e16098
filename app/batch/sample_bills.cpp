// SPDX-License-Identifier: GPL-3.0-or-later
#include "batch/sample_bills.h"

#include "batch/sample_extras.h"
#include "bill/take_back.h"
#include "job/house_stage.h"
#include "papers/issue.h"

#include <algorithm>

namespace miterbook {

namespace {

/// How a builder of the sample is billed and pays, by its place among them.
struct Habit {
    DrawBy drawBy;
    int retainage; ///< per cent
    int dueDays;
    bool waiver;
    int paysAfter; ///< days, and up to so many more
    int paysWithin;
    int silentFor; ///< days before today in which it has not paid
};

constexpr std::array habits{Habit{DrawBy::work, 10, 30, true, 9, 16, 0},
    Habit{DrawBy::stage, 0, 15, false, 22, 30, 0},
    Habit{DrawBy::completion, 5, 30, false, 45, 40, 150}};

const Habit& habitOf(const SampleHouse& house) {
    return habits.at(static_cast<std::size_t>(house.builder) % habits.size());
}

class BillMaker {
public:
    BillMaker(OpenedBook& opened, Date today, std::uint32_t seed)
        : m_opened(opened)
        , m_today(today)
        , m_draw(seed) {}

    Result<void> make(const std::vector<Id<House>>& houses) {
        for (const Id<House> id : houses) {
            SampleHouse house = look(id);
            house.number = m_houses++;
            if (auto kept = keepHabit(house); !kept)
                return kept;
            const bool isLast = id == houses.back();
            planSampleExtras(m_diary, m_opened, m_draw, house, isLast);
            plan(house);
        }
        if (auto lived = m_diary.liveUntil(m_today); !lived)
            return lived;
        for (const Id<House> id : houses) {
            if (auto settled = settle(id); !settled)
                return settled;
        }
        return addReminders();
    }

private:
    const Book& book() const { return m_opened.book(); }
    IdSource& ids() { return m_opened.workbook.ids(); }
    Result<void> perform(const Result<Edit>& edit) {
        return edit ? m_opened.perform(*edit) : Result<void>(edit.error());
    }

    SampleHouse look(Id<House> id) const {
        const House& house = *book().house(id);
        SampleHouse seen;
        seen.id = id;
        seen.underway = !isFinished(house);
        for (const TimeEntry& entry : entriesOf(book(), id)) {
            if (entry.kind == TimeKind::callback) // long after
                continue;
            seen.first = seen.first.ok() ? std::min(seen.first, entry.date) : entry.date;
            seen.last = seen.last.ok() ? std::max(seen.last, entry.date) : entry.date;
        }
        if (!seen.first.ok())
            seen.first = seen.last = house.started;
        const Id<Builder> builder = contractFor(book(), house, {}).builder;
        for (const auto& [each, row] : book().prices.of<Builder>())
            seen.builder += each < builder ? 1 : 0;
        return seen;
    }

    /// The terms of the house's builder, unless the book has some.
    Result<void> keepHabit(const SampleHouse& house) {
        Contract contract = contractFor(book(), *book().house(house.id), {});
        const bool known = std::ranges::any_of(book().jobs.of<BillingTerms>(),
            [&](const auto& entry) { return entry.second.builder == contract.builder; });
        if (known)
            return {};
        const Habit& habit = habitOf(house);
        contract.drawBy = habit.drawBy;
        contract.retainage = Percent::whole(habit.retainage);
        contract.dueDays = habit.dueDays;
        if (habit.drawBy == DrawBy::stage) {
            contract.stages = {{"first trip", Percent::whole(60), noDate},
                {"second trip", Percent::whole(30), noDate}, {"punch", Percent::whole(10), noDate}};
        }
        return m_opened.perform(keepTerms(book(), ids(), contract, habit.waiver));
    }

    void plan(const SampleHouse& house) {
        m_diary.on(
            addDays(house.first, -10), [this, house](Date day) { return agree(house, day); });
        if (house.number == 3)
            m_diary.on(
                addDays(house.first, -8), [this, house](Date day) { return ahead(house, day); });
        m_diary.on(house.dayAt(45), [this, house](Date day) { return bill(house, day, false); });
        if (house.underway)
            return;
        m_diary.on(
            addDays(house.last, 1), [this, house](Date day) { return bill(house, day, true); });
        m_diary.on(
            addDays(house.last, 32), [this, house](Date day) { return release(house, day); });
    }

    Result<void> agree(const SampleHouse& house, Date day) {
        const House& won = *book().house(house.id);
        std::vector<ContractValue> values;
        for (const WorkBid& sold : book().soldBid(won.work))
            values.push_back({sold.work, sold.price, {}});
        Contract contract = contractFor(book(), won, std::move(values));
        contract.id = ids().next<Contract>();
        contract.date = day;
        contract.purchaseOrder = "PO " + std::to_string(4100 + 7 * house.number);
        return m_opened.perform(agreeContract(book(), ids(), contract, day, {}));
    }

    /// A tenth ahead of the work.
    Result<void> ahead(const SampleHouse& house, Date day) {
        const auto billing = billingOf(book(), house.id);
        if (!billing)
            return billing.error();
        const std::int64_t dollars = valueOf(billing->schedule).cents() / 100'000 * 100;
        return issue(house, makeDeposit(*billing, day, Money::dollars(dollars)), true);
    }

    /// Says what has been done by the contract's terms.
    Result<void> sayDone(const SampleHouse& house, Date day, bool all) {
        Contract contract = *book().contract(house.id);
        const auto entries = entriesOf(book(), house.id);
        for (ContractValue& value : contract.values) {
            value.done = all ? Percent::hundred()
                             : sampleDone(book(), house, entries, value.work, day);
        }
        for (ContractStage& stage : contract.stages) {
            if (all || &stage == &contract.stages.front())
                stage.reached = stage.reached.ok() ? stage.reached : day;
        }
        if (all)
            contract.completed = day;
        return m_opened.perform(putEdit(book(), "Say what is done", contract));
    }

    Result<void> bill(const SampleHouse& house, Date day, bool all) {
        if (auto said = sayDone(house, day, all); !said)
            return said;
        const auto billing = billingOf(book(), house.id);
        if (!billing)
            return billing.error();
        const auto extras = extrasOf(book(), house.id);
        DrawAsk ask{day, progressOf(billing->contract, billing->schedule, extras), {}, {}};
        if (unbilledWork(billing->schedule, billing->bills, ask.progress).empty())
            return {};
        for (const auto& [id, charge] : book().jobs.of<Backcharge>()) {
            if (all && charge.house == house.id && charge.state == BackchargeState::accepted)
                ask.backcharges.push_back(charge);
        }
        if (!makeDraw(*billing, ask)) // more would come off than it brings
            ask.backcharges.clear();
        ask.deposit = usedUp(*billing, ask);
        const bool isWrong = house.number == 4 && all && m_wrong == Id<Invoice>();
        if (auto issued = issue(house, makeDraw(*billing, ask), !isWrong); !issued)
            return issued;
        return isWrong ? voidLater(house, day) : Result<void>();
    }

    /// As much of the deposit as the draw can bear: a small house's first draw is less than it.
    static Money usedUp(const Billing& billing, const DrawAsk& ask) {
        const auto whole = makeDraw(billing, ask);
        return whole ? std::clamp(whole->total(), Money(), depositOf(billing.bills)) : Money();
    }

    /// The paper went out with a wrong purchase order: it is voided and the work billed again.
    Result<void> voidLater(const SampleHouse& house, Date day) {
        m_wrong = newest().id;
        m_diary.on(addDays(day, 2), [this, house](Date on) -> Result<void> {
            if (auto gone = perform(
                    voidInvoice(book(), ids(), m_wrong, on, "wrong purchase order"));
                !gone)
                return gone;
            return bill(house, on, true);
        });
        return {};
    }

    Result<void> release(const SampleHouse& house, Date day) {
        const auto billing = billingOf(book(), house.id);
        if (!billing)
            return billing.error();
        const Money held = retainedOf(billing->bills);
        return held > Money() ? issue(house, makeRelease(*billing, day, held), true)
                              : Result<void>();
    }

    Result<void> issue(const SampleHouse& house, const Result<Bill>& made, bool isPaid) {
        if (!made)
            return made.error();
        if (auto issued = perform(issueBill(book(), ids(), *made)); !issued)
            return issued;
        if (isPaid)
            planPayment(house, newest());
        return {};
    }

    /// The invoice of the highest number.
    const Invoice& newest() const {
        const auto& invoices = book().jobs.of<Invoice>();
        return std::ranges::max_element(invoices, {}, [](const auto& entry) {
            return entry.second.number;
        })->second;
    }

    /// One larger payment in four comes in two parts; one retainage is paid with 125 too much.
    void planPayment(const SampleHouse& house, const Invoice& invoice) {
        const Habit& habit = habitOf(house);
        const Date day = addDays(
            invoice.date, habit.paysAfter + static_cast<int>(m_draw.below(habit.paysWithin)));
        Money first = invoice.total();
        if (invoice.total() > Money::dollars(1000) && m_draw.one(4)) {
            first = Money::dollars(invoice.total().cents() * 6 / 1000);
            planPart(house, invoice.builder, addDays(day, 21), invoice.total() - first);
        }
        if (house.number == m_houses - 4 && invoice.kind == InvoiceKind::release)
            first += Money::dollars(125);
        planPart(house, invoice.builder, day, first);
    }

    void planPart(const SampleHouse& house, Id<Builder> builder, Date day, Money amount) {
        const bool silent = day > addDays(m_today, -habitOf(house).silentFor);
        if (silent || amount <= Money())
            return;
        m_diary.on(day, [this, builder, amount](Date on) {
            const std::string check = "check " + std::to_string(2040 + 3 * ++m_checks);
            return perform(recordPayment(book(), ids(), {{}, builder, on, amount, check}));
        });
    }

    /// A house that has brought all it can is paid; of one underway it is said what is done since.
    Result<void> settle(Id<House> id) {
        House house = *book().house(id);
        if (!isFinished(house))
            return sayDone(look(id), m_today, false);
        const auto money = moneyByHouse(book());
        const auto found = money.find(id);
        const bool paid = found != money.end() && isFinished(house)
            && found->second.work == found->second.value && found->second.retained == Money()
            && found->second.owed == Money();
        if (!paid)
            return {};
        house.stage = HouseStage::paid;
        EditBuilder edit(book(), "Paid: " + house.name);
        putHouseStage(edit, book(), ids(), house, m_today, nullptr);
        return m_opened.perform(edit.take());
    }

    /// Waivers have gone out but for the last three weeks'.
    Result<void> addReminders() {
        EditBuilder edit(book(), "Enter reminders");
        for (const auto& [id, waiver] : book().jobs.of<Reminder>()) {
            Reminder sent = waiver;
            sent.done = addDays(waiver.due, 3);
            if (waiver.payment && waiver.due < addDays(m_today, -21))
                edit.put(sent);
        }
        const auto add = [&](ReminderKind kind, const char* title, int days) {
            Reminder reminder;
            reminder.id = ids().next<Reminder>();
            reminder.kind = kind;
            reminder.title = title;
            reminder.due = addDays(m_today, days);
            edit.put(reminder);
        };
        add(ReminderKind::insurance, "Certificate of insurance to the builders", 9);
        add(ReminderKind::licence, "Contractor's licence", 74);
        return m_opened.perform(edit.take());
    }

    OpenedBook& m_opened;
    Date m_today;
    SampleDraw m_draw;
    SampleDiary m_diary;
    Id<Invoice> m_wrong; ///< the one that is voided
    int m_houses = 0;
    int m_checks = 0;
};

} // namespace

Result<void> addSampleBills(
    OpenedBook& opened, const std::vector<Id<House>>& houses, Date today, std::uint32_t seed) {
    return BillMaker(opened, today, seed).make(houses);
}

} // namespace miterbook
