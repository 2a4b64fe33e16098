// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bid/bid_setup.h"
#include "desk/job_ref.h"

#include <QWidget>

#include <functional>

class QCheckBox;
class QComboBox;
class QFormLayout;
class QLineEdit;
class QPlainTextEdit;

namespace miterbook {

class Desk;

/// How this bid is priced, and the shop's words on it. Each field is one edit when it is left; what
/// cannot be read stays in the field and is said.
class BidSetupForm : public QWidget {
    Q_OBJECT
public:
    explicit BidSetupForm(Desk& desk, QWidget* parent = nullptr);

    void showJob(const JobRef& job);
    /// The table of the bid's allowances, for a page beside the form.
    QWidget* allowances() const { return m_allowances; }

protected:
    /// A text box is taken over when it is left.
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    using Change = std::function<Result<void>(BidSetup&)>;

    QComboBox* addChoice(QFormLayout* form, const QString& label, const QStringList& words);
    QLineEdit* addLine(QFormLayout* form, const QString& label);
    QPlainTextEdit* addText(QFormLayout* form, const QString& label);
    QCheckBox* addCheck(QFormLayout* form, const QString& words, bool BidSetup::*to);
    void connectNumbers();
    void connectRules();
    void connectWords();
    BidSetup present() const;
    void change(const QString& sentence, const Change& change);
    void takeText(const QPlainTextEdit* box);
    void refresh();

    Desk& m_desk;
    JobRef m_job;
    QComboBox* m_pricing;
    QComboBox* m_profitKind;
    QLineEdit* m_profit;
    QLineEdit* m_overhead;
    QLineEdit* m_contingency;
    QLineEdit* m_delivery;
    QLineEdit* m_trips;
    QLineEdit* m_waste;
    QLineEdit* m_date;
    QLineEdit* m_minimum;
    QLineEdit* m_roundTo;
    QCheckBox* m_offerOptions;
    QCheckBox* m_quoteUnits;
    QCheckBox* m_onePage;
    QWidget* m_allowances;
    QPlainTextEdit* m_scope;
    QPlainTextEdit* m_inclusions;
    QPlainTextEdit* m_exclusions;
};

} // namespace miterbook
