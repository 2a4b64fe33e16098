// SPDX-License-Identifier: GPL-3.0-or-later
// The tables of the book file are what Describe says, column by column.
#include "job/any_row.h"
#include "job/stored_form.h"
#include "store/schema.h"
#include "support/book_files.h"
#include "support/raw_sql.h"

#include <set>

namespace miterbook {
namespace {

/// The column type of the book file for a member.
template <class Member>
std::string typeOf() {
    return StoredWhole<Member> ? "INTEGER" : "TEXT";
}

template <class Member>
struct Named {
    static constexpr std::string_view table = {};
};
template <class Row>
struct Named<Id<Row>> {
    static constexpr std::string_view table = Describe<Row>::table;
};

class Schema : public testing::Test {
protected:
    void SetUp() override { ASSERT_TRUE(createBook(m_folder.book(), smallBook()).ok()); }
    std::vector<std::string> ask(const std::string& sql) { return runRaw(m_folder.book(), sql); }
    BookFolder m_folder;
};

TEST_F(Schema, ColumnsAreTheFields) {
    forEachRowKind([&]<class Row>(RowKind<Row>) {
        const std::string table(Describe<Row>::table);
        std::vector<std::string> wanted;
        forEachField<Row>([&]<class Member>(const Field<Row, Member>& field) {
            wanted.push_back(std::string(field.name) + " " + typeOf<Member>());
        });
        EXPECT_EQ(ask("SELECT name || ' ' || type FROM pragma_table_info('" + table + "')"), wanted)
            << table;
    });
}

TEST_F(Schema, ReferencesAreTheIds) {
    forEachRowKind([&]<class Row>(RowKind<Row>) {
        const std::string table(Describe<Row>::table);
        std::set<std::string> wanted;
        forEachField<Row>([&]<class Member>(const Field<Row, Member>& field) {
            if constexpr (isId<Member>) {
                if (field.name != "id")
                    wanted.insert(
                        std::string(field.name) + " " + std::string(Named<Member>::table));
            }
        });
        const auto held = ask(
            "SELECT \"from\" || ' ' || \"table\" FROM pragma_foreign_key_list('" + table + "')");
        EXPECT_EQ(std::set<std::string>(held.begin(), held.end()), wanted) << table;
    });
}

TEST_F(Schema, EveryReferenceHasAnIndex) {
    const auto without = ask(
        "SELECT t.name || '.' || f.\"from\" FROM sqlite_schema t, "
        "pragma_foreign_key_list(t.name) f WHERE t.type = 'table' AND NOT EXISTS "
        "(SELECT 1 FROM pragma_index_list(t.name) i, pragma_index_info(i.name) c "
        "WHERE c.seqno = 0 AND c.name = f.\"from\")");
    EXPECT_EQ(without, std::vector<std::string>());
}

TEST_F(Schema, EveryTableIsStrict) {
    EXPECT_EQ(ask("SELECT name FROM pragma_table_list WHERE schema = 'main' AND strict = 0 "
                  "AND name NOT LIKE 'sqlite_%'"),
        std::vector<std::string>());
}

TEST_F(Schema, SaysWhoseFileItIs) {
    EXPECT_EQ(ask("PRAGMA application_id"), std::vector<std::string>{"1296199531"}); // "MBok"
    const std::vector<std::string> format{std::to_string(formatOf(schemaSteps()))};
    EXPECT_EQ(ask("PRAGMA user_version"), format);
    EXPECT_EQ(ask("SELECT format FROM book_info"), format);
}

TEST(SchemaSteps, AreNumberedWithoutGaps) {
    int number = 0;
    for (const SchemaStep& step : schemaSteps())
        EXPECT_EQ(step.number, ++number);
    EXPECT_GE(number, 1);
}

TEST(SchemaSteps, StatementsEndWithASemicolonAtTheEndOfALine) {
    const auto statements = statementsOf(
        "-- a; b\r\nCREATE TABLE a (\n  x INT);\r\nCREATE TABLE b (y);");
    ASSERT_TRUE(statements.ok());
    ASSERT_EQ(statements->size(), 2U);
    EXPECT_EQ(statements->front(), "CREATE TABLE a (\n  x INT);");
    EXPECT_EQ(statements->back(), "CREATE TABLE b (y);");
}

TEST(SchemaSteps, AStatementWithoutItsSemicolonIsRefused) {
    EXPECT_FALSE(statementsOf("CREATE TABLE a (x INT);\nUPDATE a SET x = 1\n").ok());
}

} // namespace
} // namespace miterbook
