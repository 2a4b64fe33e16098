// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QChartView>

namespace miterbook {

/// A picture of figures whose table is beside it: in the colours of the desktop, told apart by
/// pattern, mark and dash as well as by colour, so that it can be read in grey. Its words are read
/// by screen readers.
class ChartPicture : public QChartView {
    Q_OBJECT
public:
    explicit ChartPicture(const QString& name, QWidget* parent = nullptr);

    /// Writes the picture as PDF on a page that lies. False when the file cannot be written.
    bool savePdf(const QString& path);

public Q_SLOTS:
    /// Asks for a file and saves the picture there.
    void saveAs();

protected:
    void changeEvent(QEvent* event) override;

    /// Takes away what is shown, for a picture to be made anew.
    void clear();
    /// Gives axes, title and legend the colours and type of the desktop; `words` says the picture.
    void finish(const QString& title, const QString& words);
    QColor ink() const;
    QColor accent() const;

private:
    void dress();
};

} // namespace miterbook
