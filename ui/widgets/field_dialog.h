// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/date.h"
#include "basics/money.h"
#include "basics/result.h"

#include <QDialog>

#include <functional>

class QCheckBox;
class QComboBox;
class QFormLayout;
class QLabel;
class QLineEdit;

namespace miterbook {

struct Book;

/// A few fields to fill in before something is done. What is refused is said below the fields, and
/// the dialog stays with what was typed.
class FieldDialog final : public QDialog {
    Q_OBJECT
public:
    /// `yes` is the button that does it.
    FieldDialog(const QString& title, const QString& yes, QWidget* parent);

    QLineEdit* addText(const QString& label, const QString& start = {});
    /// Shown as 2026-11-25, typed as people write days.
    QLineEdit* addDate(const QString& label, Date start);
    QLineEdit* addMoney(const QString& label, Money start = {});
    QComboBox* addChoice(const QString& label, const QStringList& choices);
    QCheckBox* addCheck(const QString& words, bool checked);
    void addHint(const QString& words);
    /// A button that does something on the way, such as a preview.
    void addStep(const QString& words, std::function<Result<void>()> step);

    /// Shows the dialog until `done` succeeds or the user gives up. `done` says what was refused.
    bool run(std::function<Result<void>()> done);

    /// The day typed, by the shop's way of writing days. Error: none, or not a day.
    static Result<Date> dateIn(const QLineEdit& line, const Book& book);
    static Result<Money> moneyIn(const QLineEdit& line);

private:
    /// A field and its label, which is plain text whatever stands in it.
    void addRow(const QString& label, QWidget* field);
    void tryIt();
    bool say(const Result<void>& result);

    QFormLayout* m_form;
    QLabel* m_refused;
    std::function<Result<void>()> m_done;
};

} // namespace miterbook
