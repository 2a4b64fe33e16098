// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "papers/job_papers.h"
#include "printing/paper_painter.h"

#include <QChartView>

#include <functional>
#include <memory>

class QToolButton;

namespace miterbook {

/// A picture of figures whose table is beside it: in the colours of the desktop, told apart by
/// pattern, mark and dash as well as by colour, so that it can be read in grey. It is printed black
/// on white whatever the desktop's colours are. Its words are read by screen readers.
class ChartPicture : public QChartView {
    Q_OBJECT
public:
    explicit ChartPicture(const QString& name, QWidget* parent = nullptr);

    /// What the picture says, in words.
    QString words() const { return accessibleDescription(); }
    QString title() const { return m_title; }
    /// Lets the picture be printed, for the house or the whole shop that `job` names each time.
    void printFor(std::function<PaperJob()> job);
    /// Paints the picture at the top of the room below a paper's blocks, as wide as the room.
    void paintOn(QPainter& painter, const QRectF& room) const;
    /// Writes the sheet with the picture as PDF. Errors name the path and why; there has to be
    /// something to print it for.
    Result<void> savePdf(const QString& path) const;

public Q_SLOTS:
    /// Shows the sheet as it will be printed.
    void preview();

protected:
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

    /// The same picture in ink.
    virtual std::unique_ptr<ChartPicture> inInk() const = 0;
    /// To be called before it is filled: black on white, as on paper.
    void useInk();
    /// Takes away what is shown, for a picture to be made anew.
    void clear();
    /// Gives axes, title and legend the colours and type of the desktop; `words` says the picture.
    void finish(const QString& title, const QString& words);
    QColor ink() const;
    QColor accent() const;
    QColor ground() const;

private:
    Paper sheet(const PaperJob& job) const;
    PaperBelow onPaper() const;
    void dress();
    void placeButton();

    QString m_title;
    bool m_inInk = false;
    std::function<PaperJob()> m_job;
    QToolButton* m_print;
};

} // namespace miterbook
