#include "core/identifiers/TerminalIdentifiers.h"

#include "core/identifiers/SpidRules.h"

#include <algorithm>
#include <set>

namespace loopwright {

namespace {

struct Entry
{
    const TerminalIdentifiers &terminal;
    DirectoryNumberCheck dn;
    SpidCheck spid;
    TeiCheck tei;
};

using Entries = std::vector<Entry>;

Finding lineFinding(Severity severity, const char *code, const Text &reason)
{
    return {severity, QString::fromLatin1(code), reason, QString(), QString(), 0};
}

bool hasCode(const Findings &findings, const char *code)
{
    return std::any_of(findings.begin(), findings.end(), [code](const Finding &found) {
        return found.code == QLatin1StringView(code);
    });
}

QString areaCodeOf(const SpidCheck &check)
{
    if (check.worst() != Severity::Error)
        for (const SpidPart &part : check.parts)
            if (part.kind == SpidPartKind::AreaCode)
                return part.digits;
    return {};
}

SpidShape shapeOf(const SpidCheck &check)
{
    return loopwright::shapeOf(check.digits.toStdString());
}

bool spidsAgree(const ProtocolVariant &variant, const QString &spid, const QString &dn)
{
    const SpidCheck check = checkSpid(variant, spid, dn);
    return !check.digits.isEmpty() && !hasCode(check.findings, "spid_dn_mismatch") &&
           !hasCode(check.findings, "spid_area_code_differs");
}

Entries judgeEach(const ProtocolVariant &variant, const std::vector<TerminalIdentifiers> &terminals)
{
    const NumberHome home = homeOf(variant, terminals);
    Entries entries;
    for (const TerminalIdentifiers &terminal : terminals) {
        if (terminal.isEmpty())
            continue;
        Entry entry{terminal, checkDirectoryNumber(variant, terminal.dn, home),
                    checkSpid(variant, terminal.spid, terminal.dn),
                    checkTei(variant, terminal.tei)};
        // A further number of the one terminal on a point-to-point line: its TEI is said already.
        if (variant.pointToPoint && !entries.empty() && terminal.tei.trimmed().isEmpty())
            entry.tei.findings.clear();
        if (hasCode(entry.spid.findings, "spid_dn_exchanged") && !entry.dn.findings.empty() &&
            checkDirectoryNumber(variant, terminal.spid, home).worst() == Severity::Note)
            entry.dn.findings.front().repair = terminal.spid.trimmed();
        entries.push_back(std::move(entry));
    }
    return entries;
}

void compareNumbers(const ProtocolVariant &variant, Entries &entries)
{
    for (std::size_t i = 1; i < entries.size(); ++i) {
        if (variant.isAnalog)
            entries[i].dn.findings.push_back(
                lineFinding(Severity::Error, "dn_count",
                            QT_TRANSLATE_NOOP("core", "An analog line has one directory number")));
        for (std::size_t j = 0; j < i; ++j) {
            if (entries[i].dn.number.isNull() ||
                entries[i].dn.number.assignmentKey() != entries[j].dn.number.assignmentKey())
                continue;
            const int other = entries[j].terminal.number;
            entries[i].dn.findings.push_back(
                variant.pointToPoint
                    ? lineFinding(
                          Severity::Warning, "dn_repeated",
                          Text(QT_TRANSLATE_NOOP("core", "The same number as terminal %1: a "
                                                         "point-to-point line needs it once"))
                              .arg(other))
                    : lineFinding(Severity::Note, "dn_shared",
                                  Text(QT_TRANSLATE_NOOP("core", "The same number as terminal %1"))
                                      .arg(other)));
            break;
        }
    }
}

void compareTeis(const ProtocolVariant &variant, Entries &entries)
{
    if (variant.pointToPoint)
        return;
    for (std::size_t i = 1; i < entries.size(); ++i)
        for (std::size_t j = 0; j < i; ++j) {
            if (!entries[i].tei.fixed || entries[i].tei.fixed != entries[j].tei.fixed)
                continue;
            entries[i].tei.findings.push_back(lineFinding(
                Severity::Error, "tei_duplicate",
                Text(QT_TRANSLATE_NOOP("core",
                                       "TEI %1 is fixed in terminal %2 too: give each its own"))
                    .arg(*entries[i].tei.fixed)
                    .arg(entries[j].terminal.number)));
            break;
        }
}

// Two equal SPIDs on one circuit.
void compareSpids(Entries &entries)
{
    for (std::size_t i = 1; i < entries.size(); ++i)
        for (std::size_t j = 0; j < i; ++j) {
            if (entries[i].spid.digits.isEmpty() ||
                entries[i].spid.digits != entries[j].spid.digits)
                continue;
            entries[i].spid.findings.push_back(lineFinding(
                Severity::Error, "spid_duplicate",
                Text(QT_TRANSLATE_NOOP("core",
                                       "The same SPID as terminal %1: each terminal has its own"))
                    .arg(entries[j].terminal.number)));
            break;
        }
}

void countSpids(const ProtocolVariant &variant, Entries &entries, bool bothChannelsOrdered)
{
    int count = 0;
    Entry *last = nullptr;
    for (Entry &entry : entries) {
        if (entry.terminal.spid.trimmed().isEmpty())
            continue;
        ++count;
        last = &entry;
    }
    if (!variant.hasSpid() || last == nullptr)
        return;
    Findings &findings = last->spid.findings;
    if (count > variant.maxSpids)
        findings.push_back(
            lineFinding(Severity::Error, "spid_count",
                        Text(QT_TRANSLATE_NOOP("core", "%1 SPIDs: a line has at most %2 terminals"))
                            .arg(count)
                            .arg(variant.maxSpids)));
    else if (count > variant.doubtfulAboveSpids)
        findings.push_back(
            lineFinding(Severity::Warning, "spid_count",
                        Text(QT_TRANSLATE_NOOP(
                                 "core", "%1 SPIDs, where %2 has %3: confirm it with the provider"))
                            .arg(count)
                            .arg(variant.name)
                            .arg(variant.doubtfulAboveSpids)));
    else if (count < 2 && variant.spidPerChannel && bothChannelsOrdered)
        findings.push_back(lineFinding(
            Severity::Warning, "spid_count",
            QT_TRANSLATE_NOOP(
                "core",
                "One SPID, and both B channels are ordered: ask the provider for the second")));
}

// A terminal that shares its profile takes its id in turn, so the first has 01.
void askForFirstTerminal(Entries &entries)
{
    for (Entry &entry : entries) {
        if (shapeOf(entry.spid) != SpidShape::Generic || entry.spid.digits.endsWith(u"01"))
            continue;
        const QString first = entry.spid.digits.left(12) + "01";
        const bool there =
            std::any_of(entries.begin(), entries.end(),
                        [&first](const Entry &other) { return other.spid.digits == first; });
        if (!there)
            entry.spid.findings.push_back(lineFinding(
                Severity::Warning, "spid_first_terminal_missing",
                Text(QT_TRANSLATE_NOOP(
                         "core",
                         "Terminal id %1, but no terminal of this number and sharing id has "
                         "01: confirm it with the provider"))
                    .arg(entry.spid.digits.right(2))));
    }
}

// The SPIDs of two terminals stand in each other's place: both hold the other's number.
void findSwapped(const ProtocolVariant &variant, Entries &entries)
{
    const auto take = [](Entry &entry, const Entry &other) {
        Finding swapped = lineFinding(
            Severity::Warning, "spid_swapped",
            Text(QT_TRANSLATE_NOOP(
                     "core",
                     "It holds the number of terminal %1, whose SPID holds this one's: swap "
                     "the two"))
                .arg(other.terminal.number));
        swapped.repair = other.spid.digits;
        std::erase_if(entry.spid.findings,
                      [](const Finding &found) { return found.code == "spid_dn_mismatch"; });
        entry.spid.findings.insert(entry.spid.findings.begin(), swapped);
    };
    for (std::size_t i = 0; i < entries.size(); ++i)
        for (std::size_t j = i + 1; j < entries.size(); ++j) {
            Entry &one = entries[i];
            Entry &other = entries[j];
            if (hasCode(one.spid.findings, "spid_dn_mismatch") &&
                hasCode(other.spid.findings, "spid_dn_mismatch") &&
                spidsAgree(variant, one.terminal.spid, other.terminal.dn) &&
                spidsAgree(variant, other.terminal.spid, one.terminal.dn)) {
                take(one, other);
                take(other, one);
            }
        }
}

// A repair that another terminal has already is none; nor is an ending that was the only one for a
// terminal alone, if others share its profile.
void withdrawRepairs(Entries &entries)
{
    for (Entry &entry : entries)
        for (Finding &found : entry.spid.findings) {
            if (found.repair.isEmpty() || found.code == "spid_swapped")
                continue;
            const bool taken = std::any_of(entries.begin(), entries.end(), [&](const Entry &other) {
                return &other != &entry && (other.spid.digits == found.repair ||
                                            (found.code == "spid_ending_missing" &&
                                             other.spid.digits.startsWith(entry.spid.digits)));
            });
            if (taken)
                found.repair.clear();
        }
}

void append(Findings &all, Findings findings, const char *field, int number)
{
    std::stable_sort(findings.begin(), findings.end(),
                     [](const Finding &a, const Finding &b) { return a.severity > b.severity; });
    for (Finding &found : findings) {
        found.field = QString("%1_%2").arg(field).arg(number);
        all.push_back(std::move(found));
    }
}

QString numbered(const char *name, int number, std::size_t of)
{
    return of > 1 ? QString("%1 %2").arg(name).arg(number) : QString::fromLatin1(name);
}

} // namespace

bool TerminalIdentifiers::isEmpty() const
{
    return dn.trimmed().isEmpty() && spid.trimmed().isEmpty() && tei.trimmed().isEmpty();
}

NumberHome homeOf(const ProtocolVariant &variant, const std::vector<TerminalIdentifiers> &terminals)
{
    std::set<QString> areaCodes;
    std::set<QString> countries;
    for (const TerminalIdentifiers &terminal : terminals) {
        const DirectoryNumber number = checkDirectoryNumber(variant, terminal.dn).number;
        if (number.isNanp() && number.digits.size() == 10)
            areaCodes.insert(number.digits.left(3));
        if (!number.country.isEmpty())
            countries.insert(number.country);
    }
    if (areaCodes.empty())
        for (const TerminalIdentifiers &terminal : terminals)
            if (const QString code = areaCodeOf(checkSpid(variant, terminal.spid)); !code.isEmpty())
                areaCodes.insert(code);
    // Two different ones tell nothing about a number that has none.
    return {areaCodes.size() == 1 ? *areaCodes.begin() : QString(),
            countries.size() == 1 && !variant.isAnalog ? *countries.begin() : QString()};
}

Findings checkTerminals(const ProtocolVariant &variant,
                        const std::vector<TerminalIdentifiers> &terminals, bool bothChannelsOrdered)
{
    Entries entries = judgeEach(variant, terminals);
    Findings all;
    if (entries.empty()) {
        append(all, checkDirectoryNumber(variant, {}).findings, "dn", 1);
        append(all, checkSpid(variant, {}).findings, "spid", 1);
        return all;
    }
    compareNumbers(variant, entries);
    compareSpids(entries);
    countSpids(variant, entries, bothChannelsOrdered);
    askForFirstTerminal(entries);
    findSwapped(variant, entries);
    withdrawRepairs(entries);
    compareTeis(variant, entries);
    for (Entry &entry : entries) {
        append(all, std::move(entry.dn.findings), "dn", entry.terminal.number);
        append(all, std::move(entry.spid.findings), "spid", entry.terminal.number);
        append(all, std::move(entry.tei.findings), "tei", entry.terminal.number);
    }
    return all;
}

std::vector<TerminalSetting> settingsToProgram(const ProtocolVariant &variant,
                                               const std::vector<TerminalIdentifiers> &terminals,
                                               int dataRate)
{
    std::vector<TerminalSetting> settings = variant.settings;
    const Entries entries = judgeEach(variant, terminals);
    const bool anyFixed = std::any_of(entries.begin(), entries.end(), [](const Entry &entry) {
        return entry.tei.fixed.has_value();
    });
    if (anyFixed) // said for each terminal instead
        std::erase_if(settings, [](const TerminalSetting &row) { return row.name == "TEI"; });
    if (dataRate > 0 && variant.hasLayer2())
        settings.push_back({"Data rate", QString("%1 kbit/s").arg(dataRate / 1000)});
    for (const Entry &entry : entries) {
        const int number = entry.terminal.number;
        const auto add = [&](const char *name, const QString &value) {
            if (!value.isEmpty())
                settings.push_back({numbered(name, number, entries.size()), value});
        };
        add("Directory number",
            entry.dn.number.isNull() ? entry.terminal.dn.trimmed() : entry.dn.number.shown());
        if (variant.hasSpid())
            add("SPID",
                entry.spid.digits.isEmpty() ? entry.terminal.spid.trimmed() : entry.spid.grouped());
        if (anyFixed)
            add("TEI", entry.tei.fixed ? QString::number(*entry.tei.fixed) : QString("automatic"));
    }
    return settings;
}

} // namespace loopwright
