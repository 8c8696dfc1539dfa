#include "app/desktop/screens/RowPapers.h"

#include "app/actions/OutFile.h"
#include "app/actions/SheetFile.h"
#include "app/desktop/Language.h"
#include "app/desktop/PrintDialogs.h"

#include <QCoreApplication>
#include <QDir>
#include <QLocale>
#include <QStandardPaths>

namespace loopwright {

namespace {

QString papersText(const char *source)
{
    return QCoreApplication::translate("RowPapers", source);
}

OrderPaper kindOf(const QJsonObject &values)
{
    return fromText<OrderPaper>(values.value("what").toString()).value_or(OrderPaper::Settings);
}

/// "1 settings card", "3 day lists"
QString countOf(int papers, OrderPaper kind)
{
    switch (kind) {
    case OrderPaper::Settings:
        return papers == 1 ? papersText(QT_TRANSLATE_NOOP("RowPapers", "1 settings card"))
                           : papersText(QT_TRANSLATE_NOOP("RowPapers", "%1 settings cards"))
                                 .arg(QLocale().toString(papers));
    case OrderPaper::DayLists:
        return papers == 1 ? papersText(QT_TRANSLATE_NOOP("RowPapers", "1 day list"))
                           : papersText(QT_TRANSLATE_NOOP("RowPapers", "%1 day lists"))
                                 .arg(QLocale().toString(papers));
    case OrderPaper::LeaveBehind:
        return papers == 1 ? papersText(QT_TRANSLATE_NOOP("RowPapers", "1 slip for the customer"))
                           : papersText(QT_TRANSLATE_NOOP("RowPapers", "%1 slips for customers"))
                                 .arg(QLocale().toString(papers));
    case OrderPaper::CloseOut:
        return papers == 1 ? papersText(QT_TRANSLATE_NOOP("RowPapers", "1 slip for the desk"))
                           : papersText(QT_TRANSLATE_NOOP("RowPapers", "%1 slips for the desk"))
                                 .arg(QLocale().toString(papers));
    case OrderPaper::Certificates:
        break;
    }
    return papers == 1 ? papersText(QT_TRANSLATE_NOOP("RowPapers", "1 copy of a certificate"))
                       : papersText(QT_TRANSLATE_NOOP("RowPapers", "%1 copies of certificates"))
                             .arg(QLocale().toString(papers));
}

bool wants(const QJsonObject &typed, OrderPaper kind)
{
    return typed.value("what").toString() == toText(kind);
}

std::vector<KeyedOption> kindOptions()
{
    return {{u'S', toText(OrderPaper::Settings),
             papersText(QT_TRANSLATE_NOOP("RowPapers", "Settings cards"))},
            {u'D', toText(OrderPaper::DayLists),
             papersText(QT_TRANSLATE_NOOP("RowPapers", "Day lists"))},
            {u'C', toText(OrderPaper::Certificates),
             papersText(QT_TRANSLATE_NOOP("RowPapers", "Copies of certificates"))},
            {u'L', toText(OrderPaper::LeaveBehind),
             papersText(QT_TRANSLATE_NOOP("RowPapers", "Slips for customers"))},
            {u'O', toText(OrderPaper::CloseOut),
             papersText(QT_TRANSLATE_NOOP("RowPapers", "Slips for the desk"))}};
}

std::vector<FieldSpec> paperFields()
{
    const auto forKind = [](OrderPaper kind) {
        return [kind](const QJsonObject &typed) { return wants(typed, kind); };
    };
    FieldSpec what{QStringLiteral("what"),
                   papersText(QT_TRANSLATE_NOOP("RowPapers", "Papers")),
                   {},
                   Answer::Choice,
                   kindOptions(),
                   0};
    FieldSpec day{
        QStringLiteral("day"), papersText(QT_TRANSLATE_NOOP("RowPapers", "Day")),
        papersText(QT_TRANSLATE_NOOP("RowPapers", "what is due by then; each installer's list")),
        Answer::Date};
    day.asked = forKind(OrderPaper::DayLists);
    FieldSpec path{QStringLiteral("path"),
                   papersText(QT_TRANSLATE_NOOP("RowPapers", "PDF")),
                   papersText(QT_TRANSLATE_NOOP("RowPapers", "where it is saved, all in one")),
                   Answer::PdfPath,
                   {},
                   0};
    path.asked = [](const QJsonObject &typed) { return !wants(typed, OrderPaper::Certificates); };
    FieldSpec folder{QStringLiteral("folder"),
                     papersText(QT_TRANSLATE_NOOP("RowPapers", "Folder")),
                     papersText(QT_TRANSLATE_NOOP("RowPapers", "a file for each, as it is sealed")),
                     Answer::FolderPath,
                     {},
                     0};
    folder.asked = forKind(OrderPaper::Certificates);
    return {what, day, path, folder};
}

QString inDocuments(const QString &name)
{
    return QDir(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation)).filePath(name);
}

Findings checkPapers(const QJsonObject &values)
{
    const auto lack = [](const QString &field, const char *reason) -> Findings {
        return {lackAt(field, papersText(reason))};
    };
    const QString place = kindOf(values) == OrderPaper::Certificates ? QStringLiteral("folder")
                                                                     : QStringLiteral("path");
    if (values.value("what").toString().isEmpty())
        return lack("what", QT_TRANSLATE_NOOP("RowPapers", "Say which papers."));
    if (kindOf(values) == OrderPaper::DayLists &&
        !QDate::fromString(values.value("day").toString(), Qt::ISODate).isValid())
        return lack("day", QT_TRANSLATE_NOOP("RowPapers", "A day is typed as 2026-12-01."));
    if (values.value(place).toString().trimmed().isEmpty())
        return lack(place, QT_TRANSLATE_NOOP("RowPapers", "Say where they are saved."));
    return {};
}

Result<OrderPapers> saved(Records &records, const PapersRequest &request, const QJsonObject &values,
                          const Progress &progress)
{
    const QString path = values.value("path").toString();
    const bool oneFile = request.kind != OrderPaper::Certificates;
    if (oneFile)
        LOOPWRIGHT_TRY(checkOut(path, FileKind::Pdf));
    LOOPWRIGHT_ASSIGN(auto papers, papersOf(records, request, progress));
    if (!oneFile)
        return papers;
    LOOPWRIGHT_TRY(writeSheet(papers.sheet, path, records.now(), progress));
    return papers;
}

} // namespace

PapersRequest papersRequest(const DeedGround &ground, const QJsonObject &values, Paper paper)
{
    return {ground.orders(), kindOf(values), paper,
            QDate::fromString(values.value("day").toString(), Qt::ISODate)};
}

QString papersSentence(const OrderPapers &papers, const QJsonObject &values, const QString &where)
{
    const QString count = countOf(papers.papers, kindOf(values));
    return where.isEmpty()
               ? papersText(QT_TRANSLATE_NOOP("RowPapers", "%1 printed.")).arg(count)
               : papersText(QT_TRANSLATE_NOOP("RowPapers", "%1 saved: %2.")).arg(count, where);
}

QString papersLacking(const OrderPapers &papers)
{
    QStringList said = localizedSentences(papers.doubts);
    if (!papers.without.isEmpty())
        said << papersText(QT_TRANSLATE_NOOP("RowPapers", "Without: %1."))
                    .arg(localizedSentences(papers.without).join(QStringLiteral("; ")));
    return said.join(u' ');
}

Deed savingPapers(const DeedGround &ground)
{
    Deed deed{papersText(QT_TRANSLATE_NOOP("RowPapers", "Print")),
              papersText(QT_TRANSLATE_NOOP("RowPapers", "Save as PDF"))};
    const QString today = ground.now.localDate().toString(Qt::ISODate);
    deed.fields = paperFields();
    deed.proposed = {{"what", toText(OrderPaper::Settings)},
                     {"day", today},
                     {"path", inDocuments(QStringLiteral("papers-%1.pdf").arg(today))},
                     {"folder", inDocuments(QStringLiteral("certificates-%1").arg(today))}};
    deed.check = checkPapers;
    deed.carryOut = [ground](Records &records, const QJsonObject &values,
                             const Progress &progress) -> Result<DeedReport> {
        PapersRequest request = papersRequest(ground, values, localPaper());
        request.folder = values.value("folder").toString();
        LOOPWRIGHT_ASSIGN(const auto papers, saved(records, request, values, progress));
        const bool inFolder = request.kind == OrderPaper::Certificates;
        DeedReport report;
        report.changed = ground.orders();
        report.remark = papersLacking(papers);
        report.sentence = papersSentence(
            papers, values, inFolder ? request.folder : values.value("path").toString());
        return report;
    };
    deed.prints = true;
    return deed;
}

} // namespace loopwright
