// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

namespace miterbook {

class BarPicture;
class DataTable;
class MoneyDesk;

/// What each builder owes by age, as a table and a picture, and a builder's statement.
class AgingTab final : public QWidget {
    Q_OBJECT
public:
    explicit AgingTab(MoneyDesk& money, QWidget* parent = nullptr);

    DataTable& table() const { return *m_table; }
    BarPicture& picture() const { return *m_picture; }

private:
    void draw();
    void showStatement();

    MoneyDesk& m_money;
    DataTable* m_table;
    BarPicture* m_picture;
};

} // namespace miterbook
