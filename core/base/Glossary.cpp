#include "core/base/Glossary.h"

#include <QStringList>

#include <algorithm>

namespace loopwright {

namespace {

#define TEXT(text) QT_TRANSLATE_NOOP("core", text)

constexpr Term terms[] = {
    {TEXT("Analog line"), "",
     TEXT("An ordinary telephone line: one voice channel over one pair that the office feeds.")},
    {TEXT("B channel"), TEXT("B1, B2"),
     TEXT("One of the two channels of a basic-rate line that carry a call each, voice or data, at "
          "64 kbit/s.")},
    {TEXT("Balance"), "",
     TEXT("How alike the two wires of a pair are against ground; here power influence less circuit "
          "noise, in dB.")},
    {TEXT("Basic rate"), TEXT("BRI, basic-rate line"),
     TEXT("An ISDN line over one pair: two B channels for calls and a D channel.")},
    {TEXT("BER"), TEXT("bit error ratio"),
     TEXT("Bit errors divided by the bits that were compared.")},
    {TEXT("Bound"), TEXT("upper bound"),
     TEXT("The worst bit error ratio that what was counted leaves possible, with its confidence; "
          "the ratio is the estimate, the bound is what a run proves.")},
    {TEXT("Bridged tap"), "",
     TEXT("A branch of the pair that ends open; it adds loss and no resistance.")},
    {TEXT("Bundle"), "",
     TEXT("The file in which orders go to a van, or in which its work comes back; signed by the "
          "station that wrote it.")},
    {TEXT("Cause"), TEXT("Q.850 cause"),
     TEXT("The number by which the network says why a call, or the start of a terminal, failed.")},
    {TEXT("Circuit noise"), TEXT("dBrnC"),
     TEXT("Noise between the two wires of a quiet line, weighted as the ear hears it.")},
    {TEXT("Completion number"), "",
     TEXT("Ten digits, some of them for checking, by which it can be said over the telephone that "
          "an order is accepted; the office hears whether that still stands.")},
    {TEXT("D channel"), "",
     TEXT("The channel of a basic-rate line, 16 kbit/s, over which terminal and switch signal; "
          "packet data too where it was ordered.")},
    {TEXT("Detector check"), "",
     TEXT("Errors that are made on purpose before a run, to show that the test set sees them; "
          "without it a clean run proves nothing.")},
    {TEXT("DN"), TEXT("directory number"), TEXT("The number that is dialled to reach the line.")},
    {TEXT("Errored second"), TEXT("ES"), TEXT("A second with at least one bit error (G.821).")},
    {TEXT("Errored second ratio"), TEXT("ESR, SESR"),
     TEXT("Errored seconds (ESR) or severely errored ones (SESR) divided by the seconds of "
          "available time; undefined where there are none.")},
    {TEXT("Exception"), "",
     TEXT("What a supervisor accepts by name and with a reason although a criterion is not met; "
          "the certificate says so.")},
    {TEXT("Foreign voltage"), "",
     TEXT("Voltage on the pair that comes from elsewhere than the serving office.")},
    {TEXT("Held"), "",
     TEXT("An order whose numbers are in error or belong to another circuit: it is on the board, "
          "and holds no number, SPID or pair until that is mended.")},
    {TEXT("Layer 1"), "",
     TEXT("Bits pass: the line and the equipment in the serving office run in step.")},
    {TEXT("Layer 2"), "",
     TEXT("The terminal has a TEI and speaks with the switch over the D channel.")},
    {TEXT("Layer 3"), "",
     TEXT("Terminal and switch signal calls; where there are SPIDs, the switch has accepted the "
          "terminal's.")},
    {TEXT("Load coil"), "",
     TEXT("A coil in the pair that helps voice over long loops; a single one stops a basic-rate "
          "line.")},
    {TEXT("Loop"), TEXT("local loop"),
     TEXT("The pair from the serving office to the customer, with all that is joined to it.")},
    {TEXT("Loss"), TEXT("insertion loss, dB"),
     TEXT("How much weaker a signal of one frequency arrives because the loop is there.")},
    {TEXT("Make-up"), "",
     TEXT("What the loop is made of, from the office to the customer: sections with gauge and "
          "length, bridged taps, load coils.")},
    {TEXT("Multipoint"), TEXT("point-to-multipoint"),
     TEXT("A line on which several terminals have each a TEI of their own; on a point-to-point "
          "line one piece of equipment takes all numbers over one link.")},
    {TEXT("NT"), TEXT("NT1, network termination"),
     TEXT("The box at the customer's between the pair from the office (U) and the wiring to the "
          "terminals (S/T).")},
    {TEXT("Pair"), TEXT("tip and ring"),
     TEXT("Two wires of a cable that belong together; the one is called tip, the other ring.")},
    {TEXT("Pattern"), TEXT("test pattern, PRBS"),
     TEXT("The known row of bits that a test set sends, so that each wrong one is seen.")},
    {TEXT("Power influence"), "",
     TEXT("Noise between the two wires and ground that power lines near the cable cause.")},
    {TEXT("Protocol variant"), "",
     TEXT("Which language the switch speaks on the D channel; it says whether there are SPIDs, of "
          "which shape, and how a terminal comes by its TEI.")},
    {TEXT("Repeat"), "",
     TEXT("A trouble within 30 days of the last one that was closed on the same circuit.")},
    {TEXT("Run"), TEXT("error-rate run, BERT"),
     TEXT("A count of the bit errors of a channel over some minutes, second by second.")},
    {TEXT("S/T interface"), "",
     TEXT("The wiring behind the NT, two pairs, to which the terminals are connected.")},
    {TEXT("Sealing current"), TEXT("wetting current, wet line"),
     TEXT("A small direct current that an office may send over a basic-rate loop to keep its "
          "joints good; a loop that carries one is called wet, any other dry.")},
    {TEXT("Self-call"), "",
     TEXT("A call from one B channel of the line to its other one; it covers this loop and its "
          "switch only.")},
    {TEXT("Serving office"), TEXT("CO, central office"),
     TEXT("Where the pair ends at the switch that serves the customer.")},
    {TEXT("Severely errored second"), TEXT("SES"),
     TEXT("A second in which one bit of a thousand or more was wrong, or the pattern was lost; it "
          "is an errored second too.")},
    {TEXT("Slip"), "",
     TEXT("The pattern goes on some bits earlier or later than it should, for two clocks differ or "
          "the call took another way.")},
    {TEXT("SPID"), TEXT("service profile identifier"),
     TEXT("A number that the provider assigns to a terminal, which sends it when it starts so that "
          "the switch finds its services; used in North America, never dialled.")},
    {TEXT("Station"), TEXT("office, set of records"),
     TEXT("One set of records with a key of its own: that of a van, or that of the desk, which is "
          "called the office where vans are spoken of.")},
    {TEXT("Tag"), "",
     TEXT("The short name that a set of records draws for itself, a van's or the office's; it "
          "stands in the numbers of the certificates that are issued there.")},
    {TEXT("TEI"), TEXT("terminal endpoint identifier"),
     TEXT("The address of a terminal on layer 2: given by the network (64 to 126), or set to a "
          "fixed number (0 to 63).")},
    {TEXT("Terminal"), "",
     TEXT("The customer's equipment on a basic-rate line; eight of them at most.")},
    {TEXT("Test line"), "",
     TEXT("A number of the serving office that sends back what it hears; for installers only, "
          "never on a customer's paper.")},
    {TEXT("TID"), TEXT("terminal id"),
     TEXT("The last two digits of many SPIDs, which tell apart terminals that share a number.")},
    {TEXT("Trouble"), "",
     TEXT("A fault of a line in service, kept as an order of the type repair until it is closed: "
          "what was found, what cleared it, the cause.")},
    {TEXT("U interface"), "", TEXT("The one pair between the serving office and the NT.")},
    {TEXT("Unavailable time"), TEXT("unavailable seconds"),
     TEXT("From the first of ten severely errored seconds in a row up to the first of ten in a row "
          "that are not; no errored seconds are counted in it.")},
    {TEXT("Van"), "",
     TEXT("A station that takes orders along, works without a network, and brings back what was "
          "done.")},
    {TEXT("Visit"), "",
     TEXT("One installer at one premises from arriving to leaving; two lines there share it, and "
          "never the safety card.")},
};

#undef TEXT

} // namespace

bool Term::isCalled(const QString &text) const
{
    return QString::fromLatin1(word).contains(text, Qt::CaseInsensitive) ||
           QString::fromLatin1(also).contains(text, Qt::CaseInsensitive);
}

std::span<const Term> glossary()
{
    return terms;
}

std::vector<const Term *> termsCalled(const QString &text)
{
    const QString sought = text.trimmed();
    std::vector<const Term *> exact, among;
    for (const Term &term : terms) {
        const QStringList names = QString::fromLatin1(term.also).split(QStringLiteral(", "))
                                  << QString::fromLatin1(term.word);
        if (names.contains(sought, Qt::CaseInsensitive))
            exact.push_back(&term);
        if (term.isCalled(sought))
            among.push_back(&term);
    }
    return exact.empty() || sought.isEmpty() ? among : exact;
}

} // namespace loopwright
