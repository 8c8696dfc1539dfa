#include "core/identifiers/IdentifierList.h"

#include "core/base/Csv.h"
#include "core/base/TextForm.h"
#include "core/identifiers/ProtocolVariant.h"
#include "core/identifiers/SpidRepair.h"
#include "core/identifiers/SpidText.h"

#include <array>

namespace loopwright {

namespace {

constexpr std::size_t pieceSize = 64 * 1024;
constexpr qint64 rowsBetweenTellings = 4096;

enum Column
{
    VariantColumn,
    SpidColumn,
    DnColumn,
    ColumnCount
};

std::string_view trimmed(std::string_view text)
{
    const QByteArrayView view = QByteArrayView(text.data(), qsizetype(text.size())).trimmed();
    return {view.data(), std::size_t(view.size())};
}

std::string_view verdictOf(Severity worst)
{
    return worst == Severity::Error ? "error" : worst == Severity::Warning ? "warning" : "ok";
}

// Where each column stands in the file; several rows in turn have the same variant, which is looked
// up once. The texts of a finding are built in place, so that a row allocates nothing.
class ListReader
{
public:
    ListReader(QByteArrayView csv, const QString &fileName)
        : m_scanner(csv)
        , m_fileName(fileName)
    {
    }

    Result<void> readHeader();
    bool readRow();
    const IdentifierListRow &row() const { return m_row; }
    std::span<const int> order() const { return m_order; }
    qsizetype octetsLeft() const { return m_scanner.octetsLeft(); }

private:
    void judge();
    void judgeForm();
    void judgeVariant();
    void setFinding(std::string_view code, Severity worst);

    CsvScanner m_scanner;
    QString m_fileName;
    std::array<int, ColumnCount> m_place{}; ///< column -> place in the file
    std::array<int, ColumnCount> m_order{}; ///< place in the file -> column
    std::string m_key;
    const ProtocolVariant *m_variant = nullptr;
    IdentifierListRow m_row;
    std::string m_reason;
    std::string m_repair;
};

Result<void> ListReader::readHeader()
{
    if (!m_scanner.next())
        return failure(ErrorCode::BadInput, "is empty: a header row is required", m_fileName);
    QStringList header;
    for (const std::string_view field : m_scanner.fields())
        header << textFromUtf8(field).trimmed();
    const QStringList columns = identifierListLayout().required;
    LOOPWRIGHT_TRY(checkCsvHeader(header, m_fileName, identifierListLayout()));
    for (int column = 0; column < ColumnCount; ++column) {
        m_place[std::size_t(column)] = int(header.indexOf(columns[column]));
        m_order[std::size_t(m_place[std::size_t(column)])] = column;
    }
    return {};
}

bool ListReader::readRow()
{
    if (!m_scanner.next())
        return false;
    m_row = {};
    m_reason.clear();
    m_repair.clear();
    m_row.line = m_scanner.line();
    const auto &fields = m_scanner.fields();
    const auto field = [&](Column column) {
        const auto place = std::size_t(m_place[column]);
        return place < fields.size() ? fields[place] : std::string_view();
    };
    m_row.variant = field(VariantColumn);
    m_row.spid = field(SpidColumn);
    m_row.dn = field(DnColumn);
    if (fields.size() != ColumnCount || !m_scanner.trouble().isEmpty())
        judgeForm();
    else
        judge();
    m_row.verdict = verdictOf(m_row.worst);
    m_row.reason = m_reason;
    m_row.repair = m_repair;
    return true;
}

void ListReader::setFinding(std::string_view code, Severity worst)
{
    m_row.code = code;
    m_row.worst = worst;
}

void ListReader::judgeForm()
{
    setFinding("row_form", Severity::Error);
    m_reason = "The row ";
    if (m_scanner.trouble().isEmpty())
        m_reason += "has " + std::to_string(m_scanner.fields().size()) +
                    " fields where the header has " + std::to_string(ColumnCount);
    else
        m_reason += m_scanner.trouble().toStdString();
}

void ListReader::judgeVariant()
{
    setFinding("unknown_variant", Severity::Error);
    const QString key = textFromUtf8(m_row.variant).trimmed();
    const QString nearest = nearestVariantKey(key);
    if (key.isEmpty())
        m_reason = "The protocol variant is missing";
    else
        m_reason = QString("There is no protocol variant \"%1\"").arg(key.left(40)).toStdString();
    if (!nearest.isEmpty())
        m_reason += QString(": write %1").arg(nearest).toStdString();
}

void ListReader::judge()
{
    const std::string_view key = trimmed(m_row.variant);
    if (m_variant == nullptr || key != m_key) {
        m_key = key;
        m_variant = findVariant(textFromUtf8(key));
        if (m_variant == nullptr) {
            judgeVariant();
            return;
        }
    }
    const SpidJudge judge(*m_variant, m_row.spid, m_row.dn);
    if (!needsDiagnosis(judge))
        return;
    const SpidDiagnosis diagnosis = diagnose(judge);
    for (const SpidFaultFound &fault : diagnosis.faults) {
        if (m_row.code.empty())
            setFinding(codeOf(fault.what), fault.severity);
        else
            m_reason += "; ";
        appendReason(m_reason, judge, fault);
    }
    m_repair = diagnosis.repair;
}

bool needsQuotes(std::string_view field)
{
    for (const char c : field)
        if (c == ',' || c == '"' || c == '\r' || c == '\n')
            return true;
    return false;
}

void appendField(std::string &out, std::string_view field)
{
    if (!needsQuotes(field)) {
        out += field;
        return;
    }
    out += '"';
    for (const char c : field) {
        if (c == '"')
            out += '"';
        out += c;
    }
    out += '"';
}

void appendRow(std::string &out, const IdentifierListRow &row, std::span<const int> order)
{
    const std::string_view fields[] = {row.variant, row.spid, row.dn};
    for (const int column : order) {
        appendField(out, fields[column]);
        out += ',';
    }
    for (const std::string_view field : {row.verdict, row.code, row.reason}) {
        appendField(out, field);
        out += ',';
    }
    out += row.repair;
    out += "\r\n";
}

/// `header` is called before the rows, `each` with every one.
template<class Header, class Each>
Result<IdentifierListCount> readList(QByteArrayView csv, const QString &fileName,
                                     const IdentifierListProgress &progress, Header header,
                                     Each each)
{
    LOOPWRIGHT_TRY(checkUtf8(csv, fileName));
    ListReader reader(csv, fileName);
    LOOPWRIGHT_TRY(reader.readHeader());
    header(reader.order());
    IdentifierListCount count;
    const auto tell = [&]() -> Result<void> {
        if (progress && !progress(csv.size() - reader.octetsLeft(), csv.size()))
            return failure(ErrorCode::Refused, "It was stopped; nothing was written.");
        return {};
    };
    while (reader.readRow()) {
        count.add(reader.row().worst);
        LOOPWRIGHT_TRY(each(reader.row(), reader.order()));
        if (count.rows % rowsBetweenTellings == 0)
            LOOPWRIGHT_TRY(tell());
    }
    LOOPWRIGHT_TRY(tell());
    return count;
}

} // namespace

Result<IdentifierListCount>
checkIdentifierRows(QByteArrayView csv, const QString &fileName,
                    const std::function<void(const IdentifierListRow &)> &row,
                    const IdentifierListProgress &progress)
{
    return readList(
        csv, fileName, progress, [](std::span<const int>) {},
        [&row](const IdentifierListRow &read, std::span<const int>) -> Result<void> {
            row(read);
            return {};
        });
}

Result<IdentifierListCount> checkIdentifierList(QByteArrayView csv, const QString &fileName,
                                                const ByteSink &write,
                                                const IdentifierListProgress &progress)
{
    std::string out;
    out.reserve(pieceSize + 4096);
    const auto flush = [&]() -> Result<void> {
        LOOPWRIGHT_TRY(write(QByteArrayView(out.data(), qsizetype(out.size()))));
        out.clear();
        return {};
    };
    LOOPWRIGHT_ASSIGN(const auto count,
                      readList(
                          csv, fileName, progress,
                          [&out](std::span<const int> order) {
                              constexpr std::string_view names[] = {"variant", "spid", "dn"};
                              for (const int column : order) {
                                  out += names[column];
                                  out += ',';
                              }
                              out += "verdict,code,reason,repair\r\n";
                          },
                          [&](const IdentifierListRow &row, std::span<const int> order) {
                              appendRow(out, row, order);
                              return out.size() < pieceSize ? Result<void>() : flush();
                          }));
    LOOPWRIGHT_TRY(flush());
    return count;
}

CsvLayout identifierListLayout()
{
    return {{"variant", "spid", "dn"}, {}, {}};
}

} // namespace loopwright
