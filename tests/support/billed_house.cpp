// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/billed_house.h"

#include "support/small_book.h"

namespace miterbook {

namespace {

void addHouse(Book& book) {
    House house;
    house.id = lot7;
    house.plan = Id<Plan>(31);
    house.work = lot7Plan;
    house.name = "Lot 7";
    house.lot = "7";
    house.address = "12 Alder Lane";
    house.stage = HouseStage::won;
    book.jobs.of<House>().put(house);
    Plan work = *book.plan(Id<Plan>(31));
    work.id = lot7Plan;
    work.house = lot7;
    book.jobs.of<Plan>().put(work);
    book.sheets.try_emplace(lot7Plan);
}

Contract contract() {
    Contract contract;
    contract.id = lot7Contract;
    contract.house = lot7;
    contract.builder = harrow;
    contract.date = marchDay(1);
    contract.purchaseOrder = "PO 881";
    contract.retainage = Percent::whole(10);
    contract.tax = Percent::whole(8);
    contract.values = {{PieceOfWork::doors, Money::dollars(4000), {}},
        {PieceOfWork::windows, Money::dollars(3500), {}},
        {PieceOfWork::base, Money::dollars(2500), {}}};
    return contract;
}

Extra doneExtraOf480() {
    Extra extra;
    extra.id = windowSeat;
    extra.house = lot7;
    extra.asked = marchDay(3);
    extra.askedBy = "R. Haas";
    extra.title = "Window seat in the bay";
    extra.state = ExtraState::done;
    extra.price = Money::dollars(480);
    extra.approved = marchDay(4);
    extra.approvedBy = "R. Haas";
    extra.done = marchDay(9);
    return extra;
}

} // namespace

Date marchDay(int number) {
    return addDays(std::chrono::year(2026) / 3 / 1, number - 1);
}

Book billedHouse() {
    Book book = smallBook();
    addHouse(book);
    book.jobs.of<Contract>().put(contract());
    book.jobs.of<Extra>().put(doneExtraOf480());
    book.jobs.of<Backcharge>().put({scratchedDoor, lot7, marchDay(8), "scratched door",
        Money::dollars(85), BackchargeState::accepted});
    return book;
}

Result<Bill> drawOf(const Book& book, Date date,
    const std::vector<std::pair<PieceOfWork, int>>& percents, bool withExtra,
    std::vector<Backcharge> backcharges) {
    const auto billing = billingOf(book, lot7);
    if (!billing)
        return billing.error();
    DrawAsk ask{date, {}, std::move(backcharges), {}};
    for (const auto& [work, percent] : percents)
        ask.progress.push_back({{work, {}}, Percent::whole(percent)});
    if (withExtra)
        ask.progress.push_back({{PieceOfWork::extras, windowSeat}, Percent::hundred()});
    return makeDraw(*billing, ask);
}

Result<void> issue(Workbook& workbook, const Result<Bill>& bill) {
    if (!bill)
        return bill.error();
    const auto edit = issueBill(workbook.book(), workbook.ids(), *bill);
    if (!edit)
        return edit.error();
    return workbook.perform(*edit);
}

Id<Invoice> invoiceNumbered(const Book& book, int number) {
    for (const auto& [id, invoice] : book.jobs.of<Invoice>()) {
        if (invoice.number == number)
            return id;
    }
    return {};
}

} // namespace miterbook
