// SPDX-License-Identifier: GPL-3.0-or-later
#include "batch/arguments.h"
#include "batch/commands.h"
#include "batch/find.h"
#include "batch/opened_book.h"
#include "batch/output_file.h"
#include "batch/print_bills.h"
#include "job/price_sheet.h"
#include "papers/paper_list.h"
#include "papers/write_paper.h"
#include "printing/pdf.h"

namespace miterbook {

namespace {

/// "bid, takeoff and order": the papers there are.
std::string paperNames(std::string_view last) {
    std::vector<std::string_view> all;
    for (const PaperKind& kind : paperKinds)
        all.push_back(kind.name);
    all.insert(all.end(), billPaperNames.begin(), billPaperNames.end());
    std::string names;
    for (std::size_t i = 0; i < all.size(); ++i) {
        const bool isLast = i + 1 == all.size();
        if (i > 0)
            names += isLast ? " " + std::string(last) + " " : ", ";
        names += all[i];
    }
    return names;
}

void declarePrint(QCommandLineParser& parser) {
    parser.addPositionalArgument(QStringLiteral("PAPER"), QString::fromStdString(paperNames("or")));
    parser.addPositionalArgument(QStringLiteral("BOOK"), QStringLiteral("the book"));
    addValue(parser, "plan", "P", "of this plan");
    addValue(parser, "house", "H", "of this house");
    addValue(parser, "elevation", "E", "with --plan: the plan's elevation");
    addValue(parser, "option", "O", "with --plan: an option; may be given several times");
    addValue(parser, "level", "L", "only this level (takeoff, and the papers of the saw)");
    addValue(parser, "number", "N", "the invoice, credit note or sent bid of this number");
    addValue(parser, "revision", "R", "with --number: this revision of a sent bid; else the last");
    addValue(parser, "builder", "B", "the statement of this builder");
    addValue(parser, "extra", "X", "with --house: the extra of this title");
    addValue(
        parser, "from", "D", "the first day of a statement; 90 days before its date if not said");
    addValue(parser, "date", "D", "the date on the paper, as 2026-11-25; today if not said");
    addValue(parser, "pdf", "F", "write it as PDF");
    addValue(parser, "csv", "F", "write its tables as CSV (- prints them)");
    addValue(parser, "json", "F", "write it as JSON (- prints it)");
    addSwitch(parser, "text", "print it as text");
}

/// What the paper is of, with everything it needs opened.
struct Subject {
    Id<Plan> plan;
    Id<House> house;
    Id<Level> level;
    Selection selection;
    Date date = noDate;
};

Result<void> chooseHouse(Subject& subject, OpenedBook& opened, const std::string& name) {
    const auto id = findHouse(opened.book(), name);
    if (!id)
        return id.error();
    const House& house = *opened.book().house(*id);
    subject.house = *id;
    subject.plan = house.work;
    if (const auto open = opened.workbook.openPlan(house.plan); !open)
        return open; // names the elevation and options the house was started with
    return opened.workbook.openPlan(house.work);
}

Result<void> choosePlan(Subject& subject, OpenedBook& opened, const QCommandLineParser& parser) {
    const auto id = findPlan(opened.book(), value(parser, "plan"));
    if (!id)
        return id.error();
    subject.plan = *id;
    if (const auto open = opened.workbook.openPlan(*id); !open)
        return open;
    auto selection = findSelection(
        opened.book(), *id, value(parser, "elevation"), values(parser, "option"));
    if (!selection)
        return selection.error();
    subject.selection = std::move(*selection);
    return {};
}

Result<Date> paperDate(const QCommandLineParser& parser) {
    if (!isSet(parser, "date"))
        return SystemClock().today();
    auto date = parseIsoDate(value(parser, "date"));
    if (date && *date == noDate)
        return badInput("--date is empty; write it as 2026-11-25.");
    return date;
}

Result<Subject> subjectOf(
    const PaperKind& kind, const QCommandLineParser& parser, OpenedBook& opened) {
    Subject subject;
    const auto date = paperDate(parser);
    if (!date)
        return date.error();
    subject.date = *date;
    if (kind.ofShop) {
        if (isSet(parser, "plan") || isSet(parser, "house"))
            return badInput("The " + std::string(kind.name) + " is of the whole shop.");
        if (const auto open = opened.workbook.openDays(addDays(*date, -6), addDays(*date, 6));
            !open)
            return open.error();
        return subject;
    }
    if (isSet(parser, "plan") == isSet(parser, "house"))
        return badInput("Say one of --plan and --house.");
    const auto chosen = isSet(parser, "house")
        ? chooseHouse(subject, opened, value(parser, "house"))
        : choosePlan(subject, opened, parser);
    if (!chosen)
        return chosen.error();
    if (isSet(parser, "level")) {
        const auto level = findLevel(opened.book(), subject.plan, value(parser, "level"));
        if (!level)
            return level.error();
        subject.level = *level;
    }
    return subject;
}

/// Opens the other plans of the plan's set for a paper that is of all of them.
Result<void> openSet(OpenedBook& opened, Id<Plan> plan) {
    const Plan* row = opened.book().plan(plan);
    for (const Id<Plan> each : row ? plansOf(opened.book(), row->set) : std::vector<Id<Plan>>()) {
        if (const auto open = opened.workbook.openPlan(each); !open)
            return open;
    }
    return {};
}

Paper makePaper(const PaperKind& kind, const OpenedBook& opened, const Subject& subject) {
    const JobFigures figures = kind.ofShop
        ? JobFigures()
        : figuresFor(opened.book(), subject.plan, subject.selection, Effort::thorough);
    return kind.build({opened.book(), subject.plan, subject.house, subject.level, subject.date,
                          subject.selection},
        figures);
}

Result<void> writePaper(
    const Paper& paper, PageSize page, const QCommandLineParser& parser, Console& console) {
    if (isSet(parser, "pdf"))
        return writePdf(paper, page, QString::fromStdString(value(parser, "pdf")));
    if (isSet(parser, "csv"))
        return writeOutput(value(parser, "csv"), paperCsv(paper), console);
    if (isSet(parser, "json"))
        return writeOutput(value(parser, "json"), paperJson(paper), console);
    console.out << paperText(paper);
    return {};
}

Result<void> printBill(const std::string& name, const std::string& path,
    const QCommandLineParser& parser, Console& console) {
    auto opened = openWorkbook(path, OpenMode::look);
    if (!opened)
        return opened.error();
    const auto date = paperDate(parser);
    if (!date)
        return date.error();
    const auto paper = billPaper(name, *opened, parser, *date);
    if (!paper)
        return paper.error();
    return writePaper(*paper, opened->book().prices.shop().page, parser, console);
}

int formsAsked(const QCommandLineParser& parser) {
    return isSet(parser, "pdf") + isSet(parser, "csv") + isSet(parser, "json")
        + isSet(parser, "text");
}

Result<void> runPrint(const QCommandLineParser& parser, Console& console) {
    const auto name = positional(parser, 0, "which paper to print");
    if (!name)
        return name.error();
    const PaperKind* kind = findPaper(*name);
    if (!kind && !isBillPaper(*name))
        return badInput("\"" + *name + "\" is no paper; there are " + paperNames("and") + ".");
    const auto path = positional(parser, 1, "of which book");
    if (!path)
        return path.error();
    if (const auto fewEnough = noMoreThan(parser, 2); !fewEnough)
        return fewEnough;
    if (formsAsked(parser) != 1)
        return badInput("Say one of --pdf, --csv, --json and --text.");
    if (!kind)
        return printBill(*name, *path, parser, console);
    if (isSet(parser, "level") && !kind->byLevel)
        return badInput("The " + *name + " is for the whole house; it cannot be of one level.");
    auto opened = openWorkbook(*path, OpenMode::look);
    if (!opened)
        return opened.error();
    const auto subject = subjectOf(*kind, parser, *opened);
    if (!subject)
        return subject.error();
    if (const auto open = kind->ofSet ? openSet(*opened, subject->plan) : Result<void>(); !open)
        return open.error();
    const Paper paper = makePaper(*kind, *opened, *subject);
    return writePaper(paper, opened->book().prices.shop().page, parser, console);
}

} // namespace

const Command printCommand{"print",
    "print a paper of a plan, house or builder: PDF, CSV, JSON or text", declarePrint, runPrint};

} // namespace miterbook
