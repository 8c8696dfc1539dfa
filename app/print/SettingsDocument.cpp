#include "app/print/SettingsDocument.h"

#include <algorithm>

namespace loopwright {

using namespace doc;

namespace {

QString withoutGaps(const QString &grouped)
{
    return QString(grouped).remove(u' ');
}

Table terminalTable(const TerminalSettings &settings)
{
    const auto any = [&](QString CertificateTerminal::*member) {
        return std::ranges::any_of(settings.terminals, [member](const CertificateTerminal &each) {
            return !(each.*member).isEmpty();
        });
    };
    const bool hasSpid = any(&CertificateTerminal::spid), hasTei = any(&CertificateTerminal::tei);
    Table table;
    table.shares = {0.08, hasSpid ? 0.35 : 0.72};
    table.head = {{settings.kind == LineKind::Analog ? "Line" : "No.", Tone::Muted},
                  {"Number", Tone::Muted}};
    if (hasSpid) {
        table.shares.push_back(hasTei ? 0.44 : 0.57);
        table.head.push_back({"Identifier (SPID)", Tone::Muted});
    }
    if (hasTei) {
        table.shares.push_back(hasSpid ? 0.13 : 0.2);
        table.head.push_back({"TEI", Tone::Muted, Align::Right});
    }
    table.gap = mm(settings.terminals.size() > 4 ? 1.1 : 2);
    for (const CertificateTerminal &terminal : settings.terminals) {
        TableRow large{{{QString::number(terminal.number), Tone::BigDigits},
                        {terminal.dnGrouped, Tone::BigDigits}}};
        TableRow small{{{}, {}}, {}, false};
        QStringList below;
        if (terminal.toKey != withoutGaps(terminal.dnGrouped) ||
            terminal.toKey != terminal.dnGrouped)
            below << "key in " + terminal.toKey;
        if (!terminal.services.isEmpty())
            below << terminal.services;
        small.cells[1] = {below.join("; "), Tone::Small};
        if (hasSpid) {
            large.cells.push_back({terminal.spidGrouped, Tone::BigDigits});
            small.cells.push_back(
                {terminal.spid.isEmpty() ? QString() : "key in " + terminal.spid, Tone::Small});
        }
        if (hasTei) {
            large.cells.push_back({terminal.tei, Tone::Body, Align::Right});
            small.cells.push_back({});
        }
        large.withNext = true;
        table.rows.push_back(std::move(large));
        table.rows.push_back(std::move(small));
    }
    return table;
}

QString explanation(const TerminalSettings &settings)
{
    if (settings.kind == LineKind::Analog)
        return "The number of your line, as it is dialled.";
    const bool grouped =
        std::ranges::any_of(settings.terminals, [](const CertificateTerminal &terminal) {
            return terminal.dnGrouped.count(u' ') > (terminal.dnGrouped.startsWith(u'+') ? 1 : 0) ||
                   terminal.spidGrouped.contains(u' ');
        });
    return grouped ? "To be programmed into the terminal equipment. Digits are grouped for reading "
                     "aloud; key them in without gaps."
                   : "To be programmed into the terminal equipment.";
}

} // namespace

Blocks settingsBlocks(const TerminalSettings &settings)
{
    Blocks blocks{Paragraph{"Settings for your equipment", Tone::Title, mm(1.5)},
                  Paragraph{explanation(settings), Tone::Body, mm(3)},
                  Facts{settings.about, 2, mm(16)}, Gap{mm(2)}};
    std::vector<CertificateLine> lines;
    if (settings.kind != LineKind::Analog)
        lines.push_back({"Protocol variant", settings.variantName});
    lines.insert(lines.end(), settings.settings.begin(), settings.settings.end());
    blocks.push_back(Facts{std::move(lines), 1, mm(40), true, Tone::Strong});
    blocks.push_back(Gap{mm(4)});
    blocks.push_back(terminalTable(settings));
    blocks.push_back(Rule{});
    return blocks;
}

} // namespace loopwright
