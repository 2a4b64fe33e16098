// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/desk.h"
#include "support/memory_keeper.h"
#include "windows/app_services.h"

#include <QSignalSpy>

#include <memory>

class QLineEdit;

namespace miterbook {

class DataTable;

/// A desk over a book in memory: the starter book, one builder, the sample plan, and a house of it.
class UiKit {
public:
    UiKit();

    Desk& desk() { return *m_desk; }
    const Book& book() const { return m_desk->book(); }
    MemoryKeeper& keeper() { return m_keeper; }
    Id<Plan> plan() const { return m_plan; }
    Id<Variant> elevation() const { return m_elevation; }
    Id<Variant> crownPack() const { return m_crownPack; }
    JobRef job() const { return {m_plan, {}, {}}; }

    /// The last sentence that was refused; empty when none was.
    QString refused() const;
    const Opening* openingOf(const std::string& mark) const;
    /// Starts a house from the plan.
    Id<House> startHouse(const std::string& name);

private:
    Id<Plan> m_plan; // filled in while the keeper's book is made, so they come first
    Id<Variant> m_elevation;
    Id<Variant> m_crownPack;
    MemoryKeeper m_keeper;
    FixedClock m_clock;
    std::unique_ptr<Desk> m_desk;
    std::unique_ptr<QSignalSpy> m_refused;
};

/// Backups of nothing: they only remember what was asked of them.
class NoSafety final : public SafetyServices {
public:
    std::vector<BackupLine> backups() const override { return lines; }
    void restoreBackup(const QString& path) override { restored = path; }
    Result<void> writeSnapshot(const QString& path) override {
        written = path;
        return {};
    }
    void takeInSnapshot(const QString& path) override { taken = path; }
    Result<QStringList> checkBook() override { return findings; }

    std::vector<BackupLine> lines;
    QStringList findings;
    QString restored;
    QString written;
    QString taken;
};

/// Services that only remember what was asked of them.
class NoServices final : public AppServices {
public:
    QString bookPath() const override { return path; }
    QStringList recentBooks() const override { return {}; }
    Result<void> newBook(const QString&) override { return {}; }
    Result<void> openBook(const QString&) override { return {}; }
    SafetyServices& safety() override { return kept; }
    Result<Edit> readPlanFile(const QString&) override { return badInput("No plan here."); }
    Result<void> writePlanFile(Id<Plan>, const QString&) override { return {}; }
    std::vector<PaperChoice> papers() const override {
        return {{QStringLiteral("bid"), QStringLiteral("Bid")}};
    }
    Result<void> previewPaper(const QString& name, const JobRef&, QWidget*) override {
        previewed = name;
        return {};
    }
    Result<void> writePaper(const QString&, const JobRef&, const QString&) override { return {}; }

    NoSafety kept;
    QString path = QStringLiteral("/books/Ridge Trim.miterbook");
    QString previewed;
};

/// Types into the current cell of a table as keys do, and leaves it with `leave`.
void typeCell(DataTable& table, const QString& typed, Qt::Key leave = Qt::Key_Return);
/// The open editor of a table; nullptr for none.
QLineEdit* editorOf(const DataTable& table);
/// Makes the cell under a title current, in the n-th row shown.
void goTo(DataTable& table, int row, const QString& title);
int columnOf(const DataTable& table, const QString& title);
QString cellText(const DataTable& table, int row, const QString& title);

} // namespace miterbook
