// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/job_ref.h"
#include "job/edit.h"
#include "windows/safety_services.h"

#include <QString>
#include <QStringList>

#include <vector>

class QWidget;

namespace miterbook {

/// A paper that can be made of a plan or house.
struct PaperChoice {
    QString name;  ///< as the batch commands call it: "bid"
    QString title; ///< "Bid"
};

/// What the windows need and only app/ can give: book files, exchange files, printing. Every error
/// is one sentence for the message strip.
class AppServices {
public:
    virtual ~AppServices() = default;

    /// The file of the book on the desk.
    virtual QString bookPath() const = 0;
    /// Book files opened lately that are still there, latest first.
    virtual QStringList recentBooks() const = 0;
    /// Makes a book with the starter values and goes over to it: the present window closes.
    virtual Result<void> newBook(const QString& path) = 0;
    /// Goes over to another book: the present window closes. On an error nothing has changed.
    virtual Result<void> openBook(const QString& path) = 0;

    /// What keeps the book on the desk from being lost.
    virtual SafetyServices& safety() = 0;

    /// The edit that brings a plan exchange file into the book.
    virtual Result<Edit> readPlanFile(const QString& path) = 0;
    /// Writes an opened plan as an exchange file.
    virtual Result<void> writePlanFile(Id<Plan> plan, const QString& path) = 0;

    virtual std::vector<PaperChoice> papers() const = 0;
    /// Shows the print preview of a paper: printer and PDF are chosen there.
    virtual Result<void> previewPaper(const QString& name, const JobRef& job, QWidget* parent) = 0;
    /// Writes a paper as PDF, CSV, text or JSON, by the file's ending.
    virtual Result<void> writePaper(const QString& name, const JobRef& job, const QString& path)
        = 0;
};

} // namespace miterbook
