// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QWidget;

namespace miterbook {

class Desk;

// The tables of the book, each in its panel.

QWidget* partsTable(Desk& desk);
QWidget* consumablesTable(Desk& desk);
QWidget* ratesTable(Desk& desk);
QWidget* factorsTable(Desk& desk);
QWidget* piecePricesTable(Desk& desk);
QWidget* crewTable(Desk& desk);
QWidget* burdenTable(Desk& desk);
QWidget* buildersTable(Desk& desk);
QWidget* planSetsTable(Desk& desk);
QWidget* offcutsTable(Desk& desk);

} // namespace miterbook
