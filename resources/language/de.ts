<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>loopwright</name>
    <message>
        <source> (%1)</source>
        <translation> (%1)</translation>
    </message>
    <message>
        <source> (limit: %1)</source>
        <translation> (Grenzwert: %1)</translation>
    </message>
    <message>
        <source> Repair: %1</source>
        <translation> Korrektur: %1</translation>
    </message>
    <message>
        <source> Without one: %1; the cover says why.</source>
        <translation> Ohne Zertifikat: %1; das Deckblatt sagt, warum.</translation>
    </message>
    <message>
        <source> and </source>
        <translation> und </translation>
    </message>
    <message>
        <source> at %1</source>
        <translation> (%1)</translation>
    </message>
    <message>
        <source> for %1</source>
        <translation> für %1</translation>
    </message>
    <message>
        <source> · last %1 s provisional</source>
        <translation> · letzte %1 s vorläufig</translation>
    </message>
    <message>
        <source> · not watched %1</source>
        <translation> · unbeobachtet %1</translation>
    </message>
    <message>
        <source> · unavailable %1</source>
        <translation> · nicht verfügbar %1</translation>
    </message>
    <message>
        <source> — %1</source>
        <translation> — %1</translation>
    </message>
    <message>
        <source>"%1" does not fit %2; its unit is %3</source>
        <translation>„%1“ passt nicht zu %2; die Einheit ist %3</translation>
    </message>
    <message>
        <source>"%1" is neither 64000 nor 56000</source>
        <translation>„%1“ ist weder 64000 noch 56000</translation>
    </message>
    <message>
        <source>"%1" is neither a day as YYYY-MM-DD nor not_required</source>
        <translation>„%1“ ist weder ein Tag als JJJJ-MM-TT noch not_required</translation>
    </message>
    <message>
        <source>"%1" is neither yes nor no</source>
        <translation>„%1“ ist weder yes noch no</translation>
    </message>
    <message>
        <source>"%1" is no area code of the North American plan: three digits, the first 2 to 9, the last two not 11.</source>
        <translation>„%1“ ist keine Vorwahl des nordamerikanischen Plans: drei Ziffern, die erste 2 bis 9, die letzten beiden nicht 11.</translation>
    </message>
    <message>
        <source>"%1" is no column of an order</source>
        <translation>„%1“ ist keine Spalte eines Auftrags</translation>
    </message>
    <message>
        <source>"%1" is no limit that anything is held against</source>
        <translation>„%1“ ist kein Grenzwert, gegen den etwas gehalten wird</translation>
    </message>
    <message>
        <source>"%1" is no protocol variant of a switch.</source>
        <translation>„%1“ ist keine Protokollvariante einer Vermittlungstechnik.</translation>
    </message>
    <message>
        <source>"%1" is no range: two groups of digits of one length, the lower first, shorter than the head number, e.g. 00-49.</source>
        <translation>„%1“ ist kein Nummernbereich: zwei Zifferngruppen gleicher Länge, die kleinere zuerst, kürzer als die Kopfnummer, z. B. 00-49.</translation>
    </message>
    <message>
        <source>"%1" is no side of it: %2.</source>
        <translation>„%1“ ist keine Seite davon: %2.</translation>
    </message>
    <message>
        <source>"%1" is not a certificate number: two digits, six letters and digits, five digits and two are expected, such as %2</source>
        <translation>„%1“ ist keine Zertifikatsnummer: erwartet werden zwei Ziffern, sechs Buchstaben und Ziffern, fünf Ziffern und zwei, etwa %2</translation>
    </message>
    <message>
        <source>"%1" is not a criterion of this order.</source>
        <translation>„%1“ ist kein Kriterium dieses Auftrags.</translation>
    </message>
    <message>
        <source>"%1" is not a day as YYYY-MM-DD</source>
        <translation>„%1“ ist kein Tag als JJJJ-MM-TT</translation>
    </message>
    <message>
        <source>"%1" is not a day of the calendar as YYYY-MM-DD</source>
        <translation>„%1“ ist kein Kalendertag als JJJJ-MM-TT</translation>
    </message>
    <message>
        <source>"%1" is not a protocol variant of a basic-rate line.</source>
        <translation>„%1“ ist keine Protokollvariante eines Basisanschlusses.</translation>
    </message>
    <message>
        <source>"%1" is not a protocol variant.</source>
        <translation>„%1“ ist keine Protokollvariante.</translation>
    </message>
    <message>
        <source>"%1" is not in the register and may not %2: say who acts, %3 at least.</source>
        <translation>„%1“ steht nicht im Register und darf dies nicht: %2. Angeben, wer handelt, mindestens %3.</translation>
    </message>
    <message>
        <source>"%1" is not in the register.</source>
        <translation>„%1“ steht nicht im Register.</translation>
    </message>
    <message>
        <source>"%1" is not made of voice, data and packet joined by +</source>
        <translation>„%1“ besteht nicht aus voice, data und packet, verbunden mit +</translation>
    </message>
    <message>
        <source>"%1" is not one of %2</source>
        <translation>„%1“ ist keiner der Werte %2</translation>
    </message>
    <message>
        <source>"%1" means something else where conflicts are settled; give the van another name.</source>
        <translation>„%1“ bedeutet beim Klären von Widersprüchen etwas anderes; geben Sie dem Wagen einen anderen Namen.</translation>
    </message>
    <message>
        <source>"%1" stands there twice</source>
        <translation>„%1“ kommt zweimal vor</translation>
    </message>
    <message>
        <source>"nothing found" is an answer: then only a run without any error counts</source>
        <translation>„nichts gefunden“ ist eine Antwort: dann zählt nur ein Messlauf ganz ohne Fehler</translation>
    </message>
    <message>
        <source>%1  %2: %3</source>
        <translation>%1  %2: %3</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1 %2 (measured %3)</source>
        <translation>%1 %2 (gemessen %3)</translation>
    </message>
    <message>
        <source>%1 %2 between %3</source>
        <translation>%1 %2 zwischen %3</translation>
    </message>
    <message>
        <source>%1 %2 call %3 failed</source>
        <translation>%1: Anruf (%2) %3 fehlgeschlagen</translation>
    </message>
    <message>
        <source>%1 %2 call %3 went through</source>
        <translation>%1: Anruf (%2) %3 zustande gekommen</translation>
    </message>
    <message>
        <source>%1 %2 call %3, %4, failed</source>
        <translation>%1: Anruf (%2) %3, %4, fehlgeschlagen</translation>
    </message>
    <message>
        <source>%1 %2 call %3, %4, went through</source>
        <translation>%1: Anruf (%2) %3, %4, zustande gekommen</translation>
    </message>
    <message>
        <source>%1 %2 cannot be, it begins with 2 to 9</source>
        <translation>%1 %2 ist nicht möglich, die erste Ziffer ist 2 bis 9</translation>
    </message>
    <message>
        <source>%1 %2 cannot be, it is a service number</source>
        <translation>%1 %2 ist nicht möglich: eine Sondernummer</translation>
    </message>
    <message>
        <source>%1 %2 is above the limit of %3 %2.</source>
        <translation>%1 %2 liegt über dem Grenzwert von %3 %2.</translation>
    </message>
    <message>
        <source>%1 %2 is held for expansion and not given out: confirm it with the provider</source>
        <translation>%1 %2 ist für Erweiterungen zurückgehalten und nicht vergeben: beim Anbieter bestätigen lassen</translation>
    </message>
    <message>
        <source>%1 %2 is held for order %3, which does not ask for it</source>
        <translation>%1 %2 ist für Auftrag %3 belegt, der es nicht verlangt</translation>
    </message>
    <message>
        <source>%1 %2 is on the order, but is not assigned: the records were changed past this program.</source>
        <translation>%1 %2 steht im Auftrag, ist aber nicht zugeteilt: der Datenbestand wurde an diesem Programm vorbei geändert.</translation>
    </message>
    <message>
        <source>%1 %2 is wanted by %3 circuits.</source>
        <translation>%1 %2 wird von %3 Anschlüssen verlangt.</translation>
    </message>
    <message>
        <source>%1 %2 of order %3 is not assigned</source>
        <translation>%1 %2 des Auftrags %3 ist nicht zugeteilt</translation>
    </message>
    <message>
        <source>%1 (%2 more are not digits)</source>
        <translation>%1 (weitere falsche Zeichen: %2)</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 (%2, the first %3 are shown)</source>
        <translation>%1 (%2, gezeigt: die ersten %3)</translation>
    </message>
    <message>
        <source>%1 (Ctrl+%2)
%3</source>
        <translation>%1 (Strg+%2)
%3</translation>
    </message>
    <message>
        <source>%1 (and %2 more)</source>
        <translation>%1 (und %2 weitere)</translation>
    </message>
    <message>
        <source>%1 (not registered)</source>
        <translation>%1 (nicht registriert)</translation>
    </message>
    <message>
        <source>%1 April %2</source>
        <translation>%1. April %2</translation>
    </message>
    <message>
        <source>%1 April to %2</source>
        <translation>%1. April bis %2</translation>
    </message>
    <message>
        <source>%1 August %2</source>
        <translation>%1. August %2</translation>
    </message>
    <message>
        <source>%1 August to %2</source>
        <translation>%1. August bis %2</translation>
    </message>
    <message>
        <source>%1 Check first (%2): %3 Then: %4</source>
        <translation>%1 Zuerst prüfen (%2): %3 Danach: %4</translation>
    </message>
    <message>
        <source>%1 December %2</source>
        <translation>%1. Dezember %2</translation>
    </message>
    <message>
        <source>%1 December to %2</source>
        <translation>%1. Dezember bis %2</translation>
    </message>
    <message>
        <source>%1 February %2</source>
        <translation>%1. Februar %2</translation>
    </message>
    <message>
        <source>%1 February to %2</source>
        <translation>%1. Februar bis %2</translation>
    </message>
    <message>
        <source>%1 It stays there; this order gets another value.</source>
        <translation>%1 Dort bleibt der Wert; dieser Auftrag bekommt einen anderen.</translation>
    </message>
    <message>
        <source>%1 January %2</source>
        <translation>%1. Januar %2</translation>
    </message>
    <message>
        <source>%1 January to %2</source>
        <translation>%1. Januar bis %2</translation>
    </message>
    <message>
        <source>%1 July %2</source>
        <translation>%1. Juli %2</translation>
    </message>
    <message>
        <source>%1 July to %2</source>
        <translation>%1. Juli bis %2</translation>
    </message>
    <message>
        <source>%1 June %2</source>
        <translation>%1. Juni %2</translation>
    </message>
    <message>
        <source>%1 June to %2</source>
        <translation>%1. Juni bis %2</translation>
    </message>
    <message>
        <source>%1 March %2</source>
        <translation>%1. März %2</translation>
    </message>
    <message>
        <source>%1 March to %2</source>
        <translation>%1. März bis %2</translation>
    </message>
    <message>
        <source>%1 May %2</source>
        <translation>%1. Mai %2</translation>
    </message>
    <message>
        <source>%1 May to %2</source>
        <translation>%1. Mai bis %2</translation>
    </message>
    <message>
        <source>%1 November %2</source>
        <translation>%1. November %2</translation>
    </message>
    <message>
        <source>%1 November to %2</source>
        <translation>%1. November bis %2</translation>
    </message>
    <message>
        <source>%1 October %2</source>
        <translation>%1. Oktober %2</translation>
    </message>
    <message>
        <source>%1 October to %2</source>
        <translation>%1. Oktober bis %2</translation>
    </message>
    <message>
        <source>%1 Read %2 on this pair for order %3.</source>
        <translation>%1 Gemessen am %2 an dieser Doppelader für Auftrag %3.</translation>
    </message>
    <message>
        <source>%1 Read %2.</source>
        <translation>%1 Gemessen am %2.</translation>
    </message>
    <message>
        <source>%1 SPIDs, where %2 has %3: confirm it with the provider</source>
        <translation>%1 SPIDs, %2 hat %3: beim Anbieter bestätigen lassen</translation>
    </message>
    <message>
        <source>%1 SPIDs: a line has at most %2 terminals</source>
        <translation>%1 SPIDs: ein Anschluss hat höchstens %2 Endgeräte</translation>
    </message>
    <message>
        <source>%1 September %2</source>
        <translation>%1. September %2</translation>
    </message>
    <message>
        <source>%1 September to %2</source>
        <translation>%1. September bis %2</translation>
    </message>
    <message>
        <source>%1 The order keeps its value, once it is free.</source>
        <translation>%1 Der Auftrag behält seinen Wert, sobald dieser frei ist.</translation>
    </message>
    <message>
        <source>%1 V ac %2</source>
        <translation>%1 V AC %2</translation>
    </message>
    <message>
        <source>%1 V dc %2</source>
        <translation>%1 V DC %2</translation>
    </message>
    <message>
        <source>%1 accepted, %2 of them on one visit%3; %4 needed none.</source>
        <translation>%1 abgenommen, %2 davon in einem Einsatz%3; ohne Einsatz: %4.</translation>
    </message>
    <message>
        <source>%1 although the office is disconnected: %2 names it (%3)</source>
        <translation>%1, obwohl die Vermittlungsstelle abgetrennt ist: %2 nennt die Quelle (%3)</translation>
    </message>
    <message>
        <source>%1 although the office is disconnected: battery of another line</source>
        <translation>%1, obwohl die Vermittlungsstelle abgetrennt ist: Batterie einer anderen Leitung</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation>%1 und %2 mehr</translation>
    </message>
    <message>
        <source>%1 are met</source>
        <translation>sind %1 erfüllt</translation>
    </message>
    <message>
        <source>%1 are not</source>
        <translation>%1 nicht</translation>
    </message>
    <message>
        <source>%1 assigned to %2</source>
        <translation>%1 zugewiesen an %2</translation>
    </message>
    <message>
        <source>%1 assigned to nobody any more</source>
        <translation>%1 niemandem mehr zugewiesen</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 (Schritt: %2)</translation>
    </message>
    <message>
        <source>%1 at %2 kbit/s</source>
        <translation>%1 mit %2 kbit/s</translation>
    </message>
    <message>
        <source>%1 billion</source>
        <translation>%1 Milliarden</translation>
    </message>
    <message>
        <source>%1 bit</source>
        <translation>%1 Bit</translation>
    </message>
    <message>
        <source>%1 bit error</source>
        <translation>%1 Bitfehler</translation>
    </message>
    <message>
        <source>%1 bit errors</source>
        <translation>%1 Bitfehler</translation>
    </message>
    <message>
        <source>%1 bit errors cannot make %2 errored seconds.</source>
        <translation>%1 Bitfehler können nicht %2 fehlerhafte Sekunden ergeben.</translation>
    </message>
    <message>
        <source>%1 bit errors in all</source>
        <translation>zusammen %1 Bitfehler</translation>
    </message>
    <message>
        <source>%1 bits</source>
        <translation>%1 Bit</translation>
    </message>
    <message>
        <source>%1 bundles lie in the watched folder: %2.</source>
        <translation>Im überwachten Ordner liegen %1 Bündel: %2.</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1 by less than the error of the prediction (%2)</source>
        <translation>%1; der Abstand ist kleiner als der Fehler der Vorausberechnung (%2)</translation>
    </message>
    <message>
        <source>%1 by more than the error of the prediction (%2)</source>
        <translation>%1; der Abstand ist größer als der Fehler der Vorausberechnung (%2)</translation>
    </message>
    <message>
        <source>%1 call in to %2</source>
        <translation>Anruf (%1) ankommend auf %2</translation>
    </message>
    <message>
        <source>%1 call out on %2</source>
        <translation>Anruf (%1) abgehend über %2</translation>
    </message>
    <message>
        <source>%1 cancelled.</source>
        <translation>%1 storniert.</translation>
    </message>
    <message>
        <source>%1 cannot be among %2</source>
        <translation>%1, aber insgesamt nur %2</translation>
    </message>
    <message>
        <source>%1 cannot carry %2</source>
        <translation>%1 kann %2 nicht übertragen</translation>
    </message>
    <message>
        <source>%1 cannot come without an errored second</source>
        <translation>%1 gibt es nicht ohne fehlerhafte Sekunde</translation>
    </message>
    <message>
        <source>%1 cannot lie in %2 of %3 bit/s</source>
        <translation>%1 passen nicht in %2 mit %3 bit/s</translation>
    </message>
    <message>
        <source>%1 cannot make %2 without a loss of synchronisation</source>
        <translation>%1 und %2 sind ohne Gleichlaufverlust nicht möglich</translation>
    </message>
    <message>
        <source>%1 certificates were issued.</source>
        <translation>%1 Zertifikate wurden ausgestellt.</translation>
    </message>
    <message>
        <source>%1 certificates will stand no longer.</source>
        <translation>%1 Zertifikate werden nicht mehr gelten.</translation>
    </message>
    <message>
        <source>%1 changes rows and needs a transaction</source>
        <translation>%1 ändert Zeilen und braucht eine Transaktion</translation>
    </message>
    <message>
        <source>%1 checked: %2 in error, %3 to look at, %4 in order</source>
        <translation>%1 geprüft: %2 fehlerhaft, %3 anzusehen, %4 in Ordnung</translation>
    </message>
    <message>
        <source>%1 circuits</source>
        <translation>%1 Anschlüsse</translation>
    </message>
    <message>
        <source>%1 circuits and more with “%2”</source>
        <translation>%1 und mehr Anschlüsse mit „%2“</translation>
    </message>
    <message>
        <source>%1 circuits with “%2”</source>
        <translation>%1 Anschlüsse mit „%2“</translation>
    </message>
    <message>
        <source>%1 comes first. %2</source>
        <translation>Zuerst: %1. %2</translation>
    </message>
    <message>
        <source>%1 copies of certificates</source>
        <translation>%1 Zertifikatskopien</translation>
    </message>
    <message>
        <source>%1 counts of the board are not those of its orders</source>
        <translation>%1 Zählungen der Übersicht sind nicht die ihrer Aufträge</translation>
    </message>
    <message>
        <source>%1 dB at %2 kHz</source>
        <translation>%1 dB bei %2 kHz</translation>
    </message>
    <message>
        <source>%1 dB measured</source>
        <translation>%1 dB gemessen</translation>
    </message>
    <message>
        <source>%1 dB predicted</source>
        <translation>%1 dB vorausberechnet</translation>
    </message>
    <message>
        <source>%1 day lists</source>
        <translation>%1 Tageslisten</translation>
    </message>
    <message>
        <source>%1 days late</source>
        <translation>seit %1 Tagen</translation>
    </message>
    <message>
        <source>%1 digits in no documented shape of %2: confirm it with the provider%3</source>
        <translation>Ziffernzahl %1, keine dokumentierte Form von %2: beim Anbieter bestätigen lassen%3</translation>
    </message>
    <message>
        <source>%1 digits with the country code: a number has at most %2</source>
        <translation>Ziffernzahl mit der Landeskennzahl %1: eine Rufnummer hat höchstens %2</translation>
    </message>
    <message>
        <source>%1 digits: a North American number has 10, the area code first</source>
        <translation>Ziffernzahl %1: eine nordamerikanische Rufnummer hat 10, die Vorwahl zuerst</translation>
    </message>
    <message>
        <source>%1 digits: a SPID has at most %2</source>
        <translation>Ziffernzahl %1: eine SPID hat höchstens %2</translation>
    </message>
    <message>
        <source>%1 digits: a SPID of %2 has at least %3</source>
        <translation>Ziffernzahl %1: eine SPID von %2 hat mindestens %3</translation>
    </message>
    <message>
        <source>%1 digits: a directory number has %2 to %3</source>
        <translation>Ziffernzahl %1: eine Rufnummer hat %2 bis %3</translation>
    </message>
    <message>
        <source>%1 digits: a directory number has at most %2</source>
        <translation>Ziffernzahl %1: eine Rufnummer hat höchstens %2</translation>
    </message>
    <message>
        <source>%1 digits: the 0 in front is lost, as a spreadsheet does</source>
        <translation>Ziffernzahl %1: die 0 vorn ist verloren, wie es eine Tabellenkalkulation tut</translation>
    </message>
    <message>
        <source>%1 digits: the ending %2 is missing, the same for every terminal with a profile of its own</source>
        <translation>Ziffernzahl %1: die Endung %2 fehlt, die für jedes Endgerät mit eigenem Profil gleich ist</translation>
    </message>
    <message>
        <source>%1 digits: the generic format has 14, which are area code, number, 2 for the sharing id and 2 for the terminal id</source>
        <translation>Ziffernzahl %1: das allgemeine Format hat 14, nämlich Vorwahl, Nummer, 2 für die Sharing-Kennung und 2 für die Endgerätekennung</translation>
    </message>
    <message>
        <source>%1 digits: the generic format has 14, which are area code, number, 2 for the sharing id and 2 for the terminal id%2</source>
        <translation>Ziffernzahl %1: das allgemeine Format hat 14, nämlich Vorwahl, Nummer, 2 für die Sharing-Kennung und 2 für die Endgerätekennung%2</translation>
    </message>
    <message>
        <source>%1 does not lie in the range %2 of %3.</source>
        <translation>%1 liegt nicht im Nummernbereich %2 von %3.</translation>
    </message>
    <message>
        <source>%1 down</source>
        <translation>%1 nicht aktiv</translation>
    </message>
    <message>
        <source>%1 entries dated %2 were recorded on %3.</source>
        <translation>%1 Einträge vom %2 wurden am %3 aufgenommen.</translation>
    </message>
    <message>
        <source>%1 entries hang on it</source>
        <translation>%1 Einträge hängen daran</translation>
    </message>
    <message>
        <source>%1 errored second</source>
        <translation>%1 fehlerhafte Sekunde</translation>
    </message>
    <message>
        <source>%1 errored seconds</source>
        <translation>%1 fehlerhafte Sekunden</translation>
    </message>
    <message numerus="yes">
        <source>%1 exceptions.</source>
        <translation><numerusform>%1 Ausnahme.</numerusform><numerusform>%1 Ausnahmen.</numerusform></translation>
    </message>
    <message>
        <source>%1 failed</source>
        <translation>%1 misslungen</translation>
    </message>
    <message>
        <source>%1 failed its self-test on this visit.</source>
        <translation>%1 hat bei diesem Einsatz den Selbsttest nicht bestanden.</translation>
    </message>
    <message>
        <source>%1 files are in %2.</source>
        <translation>%1 Dateien liegen in %2.</translation>
    </message>
    <message>
        <source>%1 findings; Enter opens the circuit of one.</source>
        <translation>%1 Befunde; Eingabe öffnet den Anschluss des gewählten.</translation>
    </message>
    <message>
        <source>%1 from the next start on.</source>
        <translation>%1 vom nächsten Start an.</translation>
    </message>
    <message>
        <source>%1 ft</source>
        <translation>%1 ft</translation>
    </message>
    <message>
        <source>%1 further runs were made</source>
        <translation>%1 weitere Messläufe wurden gemacht</translation>
    </message>
    <message>
        <source>%1 handed out to %2. The van takes the file in.</source>
        <translation>%1 an %2 mitgegeben. Der Wagen übernimmt die Datei.</translation>
    </message>
    <message>
        <source>%1 has a cause list of its own, with other meanings</source>
        <translation>%1 hat eine eigene Liste von Ursachenwerten mit anderen Bedeutungen</translation>
    </message>
    <message>
        <source>%1 has no SPID: leave it empty%2</source>
        <translation>%1 hat keine SPID: leer lassen%2</translation>
    </message>
    <message>
        <source>%1 has no TEI: leave it empty</source>
        <translation>%1 hat keinen TEI: leer lassen</translation>
    </message>
    <message>
        <source>%1 has no column %2</source>
        <translation>%1 hat keine Spalte %2</translation>
    </message>
    <message>
        <source>%1 has the key %2 now, and had %3. Have the new one read out in the van and compare: nobody else can say that it is its own.</source>
        <translation>%1 hat jetzt den Schlüssel %2 und hatte %3. Lassen Sie sich den neuen im Wagen vorlesen und vergleichen Sie: Niemand sonst kann sagen, dass er der richtige ist.</translation>
    </message>
    <message>
        <source>%1 has the login %2 already</source>
        <translation>%1 hat die Anmeldung %2 schon</translation>
    </message>
    <message>
        <source>%1 hazards are open. Keep away from those pairs until they are closed and a card reads clear.</source>
        <translation>%1 Gefahren sind offen. Von diesen Doppeladern fernbleiben, bis sie behoben sind und eine Karte keine Gefahr mehr zeigt.</translation>
    </message>
    <message>
        <source>%1 held a bundle with order %2, which is out at %3, and is written over: if that was not opened yet, hand the order out again.</source>
        <translation>%1 enthielt ein Bündel mit Auftrag %2, der bei %3 ist, und wird überschrieben: Wurde es noch nicht übernommen, geben Sie den Auftrag noch einmal mit.</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1 in %2: BER below %3 with %4 % confidence</source>
        <translation>%1 in %2: BER unter %3 mit %4 % Sicherheit</translation>
    </message>
    <message>
        <source>%1 in a second of %2</source>
        <translation>%1 in einer Sekunde mit %2</translation>
    </message>
    <message>
        <source>%1 in error</source>
        <translation>%1 fehlerhaft</translation>
    </message>
    <message>
        <source>%1 in front is only dialled: stored as +%2</source>
        <translation>%1 vorn wird nur gewählt: gespeichert als +%2</translation>
    </message>
    <message numerus="yes">
        <source>%1 instruments are</source>
        <translation><numerusform>%1 Messgerät ist</numerusform><numerusform>%1 Messgeräte sind</numerusform></translation>
    </message>
    <message>
        <source>%1 is another kind of time than in the rows before</source>
        <translation>%1 ist eine andere Art Zeitangabe als in den Zeilen davor</translation>
    </message>
    <message>
        <source>%1 is down</source>
        <translation>%1 ist nicht aktiv</translation>
    </message>
    <message>
        <source>%1 is down, cause %2 (%3): %4</source>
        <translation>%1 ist nicht aktiv, Ursache %2 (%3): %4</translation>
    </message>
    <message>
        <source>%1 is down, cause %2: %3</source>
        <translation>%1 ist nicht aktiv, Ursache %2: %3</translation>
    </message>
    <message>
        <source>%1 is down: %2</source>
        <translation>%1 ist nicht aktiv: %2</translation>
    </message>
    <message>
        <source>%1 is held by circuit %2.</source>
        <translation>%1 ist bei Anschluss %2 vergeben.</translation>
    </message>
    <message>
        <source>%1 is in sync.</source>
        <translation>%1 ist im Gleichlauf.</translation>
    </message>
    <message>
        <source>%1 is in the register: its calibration is the office's to record.</source>
        <translation>%1 steht im Register: seine Kalibrierung trägt die Vermittlungsstelle ein.</translation>
    </message>
    <message>
        <source>%1 is met</source>
        <translation>ist %1 erfüllt</translation>
    </message>
    <message>
        <source>%1 is more than %2</source>
        <translation>%1 ist mehr als %2</translation>
    </message>
    <message>
        <source>%1 is more than %2 where it is wet</source>
        <translation>%1 ist mehr als %2 bei Nässe</translation>
    </message>
    <message>
        <source>%1 is neither a count of seconds nor a time</source>
        <translation>%1 ist weder eine Sekundenzahl noch eine Uhrzeit</translation>
    </message>
    <message>
        <source>%1 is neither yes nor no</source>
        <translation>%1 ist weder yes noch no</translation>
    </message>
    <message>
        <source>%1 is no date: with strokes the month stands first (12/31/2026); or write 2026-12-31</source>
        <translation>%1 ist kein Datum: mit Schrägstrichen steht der Monat vorn (12/31/2026); oder 2026-12-31 schreiben</translation>
    </message>
    <message>
        <source>%1 is no van of this office.</source>
        <translation>%1 ist kein Wagen dieses Büros.</translation>
    </message>
    <message>
        <source>%1 is not</source>
        <translation>%1 nicht</translation>
    </message>
    <message>
        <source>%1 is not a number of bit errors</source>
        <translation>%1 ist keine Zahl von Bitfehlern</translation>
    </message>
    <message>
        <source>%1 is not needed for this order.</source>
        <translation>Für diesen Auftrag nicht nötig: %1.</translation>
    </message>
    <message>
        <source>%1 is not proved yet: %2 more without an error</source>
        <translation>%1 ist noch nicht nachgewiesen: noch %2 ohne Fehler</translation>
    </message>
    <message>
        <source>%1 is not registered: what it measures does not count</source>
        <translation>%1 ist nicht registriert: Was damit gemessen wird, zählt nicht</translation>
    </message>
    <message>
        <source>%1 is not taken:</source>
        <translation>%1 wird nicht übernommen:</translation>
    </message>
    <message>
        <source>%1 is not there to be replaced</source>
        <translation>%1 ist nicht vorhanden und kann nicht ersetzt werden</translation>
    </message>
    <message>
        <source>%1 is of %2</source>
        <translation>%1 hat tatsächlich %2</translation>
    </message>
    <message>
        <source>%1 is proved</source>
        <translation>%1 ist nachgewiesen</translation>
    </message>
    <message>
        <source>%1 is refuted</source>
        <translation>%1 ist widerlegt</translation>
    </message>
    <message>
        <source>%1 is registered as %2 and may not %3: that needs %4.</source>
        <translation>%1 ist als %2 registriert und darf dies nicht: %3. Dazu nötig: %4.</translation>
    </message>
    <message>
        <source>%1 is the last supervisor: register another one first</source>
        <translation>%1 ist die letzte Aufsicht: zuerst eine andere eintragen</translation>
    </message>
    <message>
        <source>%1 is the tag of these records themselves.</source>
        <translation>%1 ist das Kürzel dieser Aufzeichnungen selbst.</translation>
    </message>
    <message>
        <source>%1 is there with other values.</source>
        <translation>%1 ist mit anderen Werten da.</translation>
    </message>
    <message>
        <source>%1 is up, its TEI was not recorded.</source>
        <translation>%1 ist aktiv, der TEI wurde nicht erfasst.</translation>
    </message>
    <message>
        <source>%1 line %2</source>
        <translation>%1 Zeile %2</translation>
    </message>
    <message>
        <source>%1 lines</source>
        <translation>%1 Anschlüsse</translation>
    </message>
    <message>
        <source>%1 lines, each with a certificate of its own.</source>
        <translation>%1 Anschlüsse, jeder mit eigenem Zertifikat.</translation>
    </message>
    <message>
        <source>%1 load coils</source>
        <translation>%1 Pupinspulen</translation>
    </message>
    <message>
        <source>%1 loops are in %2.</source>
        <translation>Anschlussleitungen: %1, gespeichert in %2.</translation>
    </message>
    <message>
        <source>%1 loops of %2: %3 suitable, %4 marginal, %5 not suitable.</source>
        <translation>Anschlussleitungen von %2: %1, davon %3 geeignet, %4 grenzwertig, %5 nicht geeignet.</translation>
    </message>
    <message>
        <source>%1 loss of synchronisation</source>
        <translation>%1 Synchronverlust</translation>
    </message>
    <message>
        <source>%1 losses of synchronisation</source>
        <translation>%1 Gleichlaufverluste</translation>
    </message>
    <message>
        <source>%1 mA through %2 ohm take %3 V, more than the %4 V measured on-hook: one of the three readings is wrong, or the feed rises with the load.</source>
        <translation>%1 mA durch %2 Ohm brauchen %3 V, mehr als die bei aufgelegtem Hörer gemessenen %4 V: einer der drei Messwerte ist falsch, oder die Speisung steigt mit der Last.</translation>
    </message>
    <message>
        <source>%1 measured</source>
        <translation>%1 gemessen</translation>
    </message>
    <message>
        <source>%1 million</source>
        <translation>%1 Millionen</translation>
    </message>
    <message>
        <source>%1 minutes at %2 kbit/s</source>
        <translation>%1 Minuten mit %2 kbit/s</translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation>noch %1</translation>
    </message>
    <message>
        <source>%1 more are odd</source>
        <translation>%1 weitere sind auffällig</translation>
    </message>
    <message>
        <source>%1 moved to %2.</source>
        <translation>%1 umterminiert auf %2.</translation>
    </message>
    <message>
        <source>%1 needs no exception: it is %2.</source>
        <translation>%1 braucht keine Ausnahme: %2.</translation>
    </message>
    <message>
        <source>%1 new entries</source>
        <translation>%1 neue Einträge</translation>
    </message>
    <message>
        <source>%1 no access</source>
        <translation>%1 kein Zugang</translation>
    </message>
    <message>
        <source>%1 not accepted; a criterion is not met in %2%3.</source>
        <translation>%1 nicht abgenommen; ein Kriterium ist nicht erfüllt in %2%3.</translation>
    </message>
    <message>
        <source>%1 not given</source>
        <translation>%1 nicht angegeben</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1 of %2 %3 is %4 the limit of %5 %3.</source>
        <translation>%1: %2 %3, Grenzwert %5 %3 %4.</translation>
    </message>
    <message>
        <source>%1 of %2 calls made</source>
        <translation>%1 von %2 Anrufen zustande gekommen</translation>
    </message>
    <message>
        <source>%1 of %2 does not count: %3</source>
        <translation>%1 vom %2 zählt nicht: %3</translation>
    </message>
    <message>
        <source>%1 of %2 does not count: %3.</source>
        <translation>%1 vom %2 zählt nicht: %3.</translation>
    </message>
    <message>
        <source>%1 of %2 is kept and does not count: %3</source>
        <translation>%1 von %2 bleibt und zählt nicht: %3</translation>
    </message>
    <message>
        <source>%1 of %2 lines have a certificate; for each other it is said why not.</source>
        <translation>%1 von %2 Anschlüssen haben ein Zertifikat; bei jedem anderen steht, warum nicht.</translation>
    </message>
    <message>
        <source>%1 of %2 was made more than 30 days before the order was taken in.</source>
        <translation>%1 vom %2 ist mehr als 30 Tage älter als die Aufnahme des Auftrags.</translation>
    </message>
    <message>
        <source>%1 of %2: %3</source>
        <translation>%1 von %2: %3</translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n SPIDs accepted</source>
        <translation><numerusform>%1 von %n SPID angenommen</numerusform><numerusform>%1 von %n SPIDs angenommen</numerusform></translation>
    </message>
    <message>
        <source>%1 of terminal %2</source>
        <translation>%1 des Endgeräts %2</translation>
    </message>
    <message>
        <source>%1 of them failed</source>
        <translation>%1 davon misslangen</translation>
    </message>
    <message>
        <source>%1 of them held</source>
        <translation>davon %1 zurückgehalten</translation>
    </message>
    <message>
        <source>%1 of them struck out</source>
        <translation>%1 davon gestrichen</translation>
    </message>
    <message>
        <source>%1 of those met are near the limit</source>
        <translation>%1 der erfüllten liegen nahe am Grenzwert</translation>
    </message>
    <message>
        <source>%1 of those met is near the limit</source>
        <translation>%1 der erfüllten liegt nahe am Grenzwert</translation>
    </message>
    <message>
        <source>%1 ohm measured</source>
        <translation>%1 Ohm gemessen</translation>
    </message>
    <message>
        <source>%1 ohm predicted</source>
        <translation>%1 Ohm vorausberechnet</translation>
    </message>
    <message>
        <source>%1 on hold, waiting on %2.</source>
        <translation>%1 angehalten; gewartet wird auf: %2.</translation>
    </message>
    <message numerus="yes">
        <source>%1 open orders</source>
        <translation><numerusform>%1 offener Auftrag</numerusform><numerusform>%1 offene Aufträge</numerusform></translation>
    </message>
    <message numerus="yes">
        <source>%1 open orders are</source>
        <translation><numerusform>%1 offener Auftrag ist</numerusform><numerusform>%1 offene Aufträge sind</numerusform></translation>
    </message>
    <message>
        <source>%1 order that needs only paper.</source>
        <translation>%1 Auftrag braucht nur Papier.</translation>
    </message>
    <message>
        <source>%1 orders</source>
        <translation>%1 Aufträge</translation>
    </message>
    <message>
        <source>%1 orders and more</source>
        <translation>%1 Aufträge und mehr</translation>
    </message>
    <message>
        <source>%1 orders are in %2.</source>
        <translation>%1 Aufträge stehen in %2.</translation>
    </message>
    <message>
        <source>%1 orders are with vans, which will not know of it until they are home.</source>
        <translation>%1 Aufträge sind bei Wagen, die davon erst erfahren, wenn die Aufträge zurück sind.</translation>
    </message>
    <message>
        <source>%1 orders selected</source>
        <translation>%1 Aufträge ausgewählt</translation>
    </message>
    <message>
        <source>%1 orders that need only paper.</source>
        <translation>%1 Aufträge brauchen nur Papier.</translation>
    </message>
    <message numerus="yes">
        <source>%1 orders were</source>
        <translation><numerusform>%1 Auftrag wurde</numerusform><numerusform>%1 Aufträge wurden</numerusform></translation>
    </message>
    <message>
        <source>%1 orders: %2</source>
        <translation>%1 Aufträge: %2</translation>
    </message>
    <message>
        <source>%1 page</source>
        <translation>%1 Seite</translation>
    </message>
    <message>
        <source>%1 pages</source>
        <translation>%1 Seiten</translation>
    </message>
    <message>
        <source>%1 printed.</source>
        <translation>%1 gedruckt.</translation>
    </message>
    <message>
        <source>%1 quiet seconds without an error, then errors sent on purpose, each seen, then the counters cleared</source>
        <translation>%1 ruhige Sekunden ohne Fehler, dann absichtlich eingefügte Fehler, jeder gesehen, dann die Zähler zurückgesetzt</translation>
    </message>
    <message>
        <source>%1 quiet seconds, then every error sent is seen, then counters cleared, before the run</source>
        <translation>%1 ruhige Sekunden, dann jeder eingefügte Fehler gesehen, dann die Zähler zurückgesetzt, vor dem Messlauf</translation>
    </message>
    <message>
        <source>%1 readings made with instrument %2</source>
        <translation>%1 Messwerte mit Messgerät %2 ermittelt</translation>
    </message>
    <message>
        <source>%1 recorded, and the seconds give %2</source>
        <translation>%1 erfasst, die Sekunden ergeben %2</translation>
    </message>
    <message>
        <source>%1 refused</source>
        <translation>%1 abgelehnt</translation>
    </message>
    <message numerus="yes">
        <source>%1 repeats</source>
        <translation><numerusform>%1 Wiederholung</numerusform><numerusform>%1 Wiederholungen</numerusform></translation>
    </message>
    <message>
        <source>%1 resumed.</source>
        <translation>%1 fortgesetzt.</translation>
    </message>
    <message>
        <source>%1 rows</source>
        <translation>%1 Zeilen</translation>
    </message>
    <message>
        <source>%1 rows are in %2.</source>
        <translation>Zeilen: %1, gespeichert in %2.</translation>
    </message>
    <message>
        <source>%1 rows; the first %2 are shown, all are counted and saved.</source>
        <translation>%1 Zeilen; die ersten %2 werden gezeigt, gezählt und gespeichert werden alle.</translation>
    </message>
    <message>
        <source>%1 runs were made</source>
        <translation>%1 Messläufe wurden gemacht</translation>
    </message>
    <message>
        <source>%1 runs were struck out. %2</source>
        <translation>%1 Messläufe wurden gestrichen. %2</translation>
    </message>
    <message>
        <source>%1 s at %2 kbit/s</source>
        <translation>%1 s mit %2 kbit/s</translation>
    </message>
    <message>
        <source>%1 s on %2 by %3: %4.</source>
        <translation>%1 s auf %2 über %3: %4.</translation>
    </message>
    <message>
        <source>%1 s unbroken, BER at most %2 (%3 bit errors), at most %4 errored seconds, %5 severely errored</source>
        <translation>%1 s ohne Unterbrechung, BER höchstens %2 (%3 Bitfehler), höchstens %4 fehlerhafte Sekunden, %5 stark fehlerhafte</translation>
    </message>
    <message>
        <source>%1 s without a break, counters started from zero</source>
        <translation>%1 s ohne Unterbrechung, Zähler bei null begonnen</translation>
    </message>
    <message>
        <source>%1 saved: %2.</source>
        <translation>%1 gespeichert: %2.</translation>
    </message>
    <message>
        <source>%1 seconds taken from %2.</source>
        <translation>%1 Sekunden aus %2 übernommen.</translation>
    </message>
    <message>
        <source>%1 seen</source>
        <translation>%1 gesehen</translation>
    </message>
    <message>
        <source>%1 settings cards</source>
        <translation>%1 Einstellungskarten</translation>
    </message>
    <message>
        <source>%1 severely errored or unavailable seconds</source>
        <translation>%1 stark fehlerhafte oder nicht verfügbare Sekunden</translation>
    </message>
    <message>
        <source>%1 severely errored second</source>
        <translation>%1 stark fehlerhafte Sekunde</translation>
    </message>
    <message>
        <source>%1 severely errored seconds</source>
        <translation>%1 stark fehlerhafte Sekunden</translation>
    </message>
    <message>
        <source>%1 since %2</source>
        <translation>%1 seit %2</translation>
    </message>
    <message>
        <source>%1 slip</source>
        <translation>%1 Schlupf</translation>
    </message>
    <message>
        <source>%1 slips</source>
        <translation>%1 Schlupfe</translation>
    </message>
    <message>
        <source>%1 slips for customers</source>
        <translation>%1 Zettel für Kunden</translation>
    </message>
    <message>
        <source>%1 slips for the desk</source>
        <translation>%1 Zettel für die Dienststelle</translation>
    </message>
    <message>
        <source>%1 stands there twice</source>
        <translation>%1 kommt zweimal vor</translation>
    </message>
    <message>
        <source>%1 taken in</source>
        <translation>%1 aufgenommen</translation>
    </message>
    <message>
        <source>%1 there already</source>
        <translation>%1 schon vorhanden</translation>
    </message>
    <message>
        <source>%1 things to settle between stations</source>
        <translation>%1 Widersprüche zwischen Stationen zu klären</translation>
    </message>
    <message>
        <source>%1 through</source>
        <translation>%1 durchgekommen</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 to be calibrated, %2 overdue.</source>
        <translation>%1 zu kalibrieren, %2 überfällig.</translation>
    </message>
    <message numerus="yes">
        <source>%1 troubles</source>
        <translation><numerusform>%1 Störung</numerusform><numerusform>%1 Störungen</numerusform></translation>
    </message>
    <message>
        <source>%1 unavailable second</source>
        <translation>%1 nicht verfügbare Sekunde</translation>
    </message>
    <message>
        <source>%1 unavailable seconds</source>
        <translation>%1 nicht verfügbare Sekunden</translation>
    </message>
    <message>
        <source>%1 up</source>
        <translation>%1 aktiv</translation>
    </message>
    <message>
        <source>%1 voltage, %2</source>
        <translation>%1-Spannung, %2</translation>
    </message>
    <message>
        <source>%1 was another than the one that stands there now</source>
        <translation>%1 war ein anderes als das, das jetzt dort steht</translation>
    </message>
    <message>
        <source>%1 was changed in the van to %2, and stays %3 here.</source>
        <translation>%1 wurde im Wagen in %2 geändert und bleibt hier %3.</translation>
    </message>
    <message>
        <source>%1 was down on %2 and up again on %3.</source>
        <translation>%1 war am %2 ausgefallen und am %3 wieder aktiv.</translation>
    </message>
    <message>
        <source>%1 was entered from its label: an update confirms it.</source>
        <translation>%1 wurde vom Etikett eingetragen: eine Aktualisierung bestätigt es.</translation>
    </message>
    <message>
        <source>%1 was first recorded up after the run.</source>
        <translation>%1 wurde erst nach dem Messlauf als aktiv erfasst.</translation>
    </message>
    <message>
        <source>%1 was given by %2, and is not in it</source>
        <translation>%1 wurde von %2 gegeben und steht nicht darin</translation>
    </message>
    <message>
        <source>%1 was not recorded.</source>
        <translation>%1 wurde nicht erfasst.</translation>
    </message>
    <message>
        <source>%1 was not shown</source>
        <translation>%1 nicht gezeigt</translation>
    </message>
    <message>
        <source>%1 was recorded at %2, and not at %3</source>
        <translation>%1 wurde um %2 eingetragen und nicht um %3</translation>
    </message>
    <message>
        <source>%1 was recorded without an instrument.</source>
        <translation>Ohne Messgerät erfasst: %1.</translation>
    </message>
    <message>
        <source>%1 was recorded, and is not in it: the log is shorter now</source>
        <translation>%1 war eingetragen und steht nicht darin: das Protokoll ist jetzt kürzer</translation>
    </message>
    <message>
        <source>%1 were not shown</source>
        <translation>%1 nicht gezeigt</translation>
    </message>
    <message>
        <source>%1 where %2 are the most</source>
        <translation>%1, zulässig höchstens %2</translation>
    </message>
    <message>
        <source>%1 where none is allowed</source>
        <translation>%1, wo keiner erlaubt ist</translation>
    </message>
    <message>
        <source>%1 works</source>
        <translation>%1 arbeitet</translation>
    </message>
    <message>
        <source>%1 works from now on.</source>
        <translation>Ab jetzt arbeitet %1.</translation>
    </message>
    <message>
        <source>%1 would be changed into itself.</source>
        <translation>%1 würde in sich selbst geändert.</translation>
    </message>
    <message>
        <source>%1 would leave rows of %2 without what they refer to</source>
        <translation>%1 nähme Zeilen von %2, worauf sie verweisen</translation>
    </message>
    <message>
        <source>%1 · %2 on %3</source>
        <translation>%1 · %2 am %3</translation>
    </message>
    <message>
        <source>%1 · %2 · %3</source>
        <translation>%1 · %2 · %3</translation>
    </message>
    <message>
        <source>%1 · at %2</source>
        <translation>%1 · Schritt: %2</translation>
    </message>
    <message>
        <source>%1 — Loopwright</source>
        <translation>%1 – Loopwright</translation>
    </message>
    <message>
        <source>%1 — to be changed below.</source>
        <translation>%1 – unten zu ändern.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, %2 days old in the mean, the oldest %3; %4 late%5.</source>
        <translation>%1, im Mittel %2 Tage alt, höchstens %3; %4 verspätet%5.</translation>
    </message>
    <message>
        <source>%1, %2%3.</source>
        <translation>%1, %2%3.</translation>
    </message>
    <message>
        <source>%1, %2, at %3: only on the cover. %4</source>
        <translation>%1, %2, Schritt: %3 – nur auf dem Deckblatt. %4</translation>
    </message>
    <message>
        <source>%1, %2, due %3</source>
        <translation>%1, %2, fällig %3</translation>
    </message>
    <message>
        <source>%1, %2. %3</source>
        <translation>%1, %2. %3</translation>
    </message>
    <message>
        <source>%1, %2: its certificate is in the set</source>
        <translation>%1, %2: Zertifikat ist im Satz</translation>
    </message>
    <message>
        <source>%1, Message not compatible with state, or unknown</source>
        <translation>%1, Nachricht passt nicht zum Zustand oder ist unbekannt</translation>
    </message>
    <message>
        <source>%1, a digit of another script</source>
        <translation>%1, eine Ziffer einer anderen Schrift</translation>
    </message>
    <message>
        <source>%1, and %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, at %2 from the office</source>
        <translation>%1, bei %2 ab der Vermittlungsstelle</translation>
    </message>
    <message>
        <source>%1, beginning %2 from the office</source>
        <translation>%1, Beginn bei %2 ab der Vermittlungsstelle</translation>
    </message>
    <message>
        <source>%1, beginning at the office</source>
        <translation>%1, Beginn an der Vermittlungsstelle</translation>
    </message>
    <message>
        <source>%1, by %2</source>
        <translation>%1, durch %2</translation>
    </message>
    <message>
        <source>%1, by word of %2</source>
        <translation>%1, nach Auskunft von %2</translation>
    </message>
    <message>
        <source>%1, changed</source>
        <translation>%1, geändert</translation>
    </message>
    <message>
        <source>%1, column %2</source>
        <translation>%1, Spalte %2</translation>
    </message>
    <message>
        <source>%1, continued</source>
        <translation>%1, Fortsetzung</translation>
    </message>
    <message>
        <source>%1, downwards</source>
        <translation>%1, absteigend</translation>
    </message>
    <message>
        <source>%1, due %2, at %3</source>
        <translation>%1, fällig %2, Schritt: %3</translation>
    </message>
    <message>
        <source>%1, line %2</source>
        <translation>%1, Zeile %2</translation>
    </message>
    <message>
        <source>%1, marginal from %2</source>
        <translation>%1, grenzwertig ab %2</translation>
    </message>
    <message>
        <source>%1, marginal to %2</source>
        <translation>%1, grenzwertig bis %2</translation>
    </message>
    <message>
        <source>%1, nothing chosen</source>
        <translation>%1, nichts gewählt</translation>
    </message>
    <message>
        <source>%1, order %2: %3 %4</source>
        <translation>%1, Auftrag %2: %3 %4</translation>
    </message>
    <message>
        <source>%1, ring to ground</source>
        <translation>%1, b gegen Erde</translation>
    </message>
    <message>
        <source>%1, row %2</source>
        <translation>%1, Zeile %2</translation>
    </message>
    <message>
        <source>%1, shown by calls</source>
        <translation>%1, gezeigt durch Rufe</translation>
    </message>
    <message>
        <source>%1, shown by calls and a run at %2 kbit/s</source>
        <translation>%1, gezeigt durch Rufe und einen Messlauf mit %2 kbit/s</translation>
    </message>
    <message>
        <source>%1, tip to ground</source>
        <translation>%1, a gegen Erde</translation>
    </message>
    <message>
        <source>%1, tip to ring</source>
        <translation>%1, a gegen b</translation>
    </message>
    <message>
        <source>%1, upwards</source>
        <translation>%1, aufsteigend</translation>
    </message>
    <message>
        <source>%1, with %2 entries. The office takes the file in.</source>
        <translation>%1, mit %2 Einträgen. Das Büro übernimmt die Datei.</translation>
    </message>
    <message>
        <source>%1, with 1 entry. The office takes the file in.</source>
        <translation>%1, mit 1 Eintrag. Das Büro übernimmt die Datei.</translation>
    </message>
    <message>
        <source>%1, with the cable at %2 °F</source>
        <translation>%1, bei %2 °F im Kabel</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>%1. In a terminal: loopwright-cli restore --db "%2" "%1"</source>
        <translation>%1. In einer Konsole: loopwright-cli restore --db "%2" "%1"</translation>
    </message>
    <message>
        <source>%1. Read by %2 for order %3, %4. %5</source>
        <translation>%1. Gemessen von %2 für Auftrag %3, %4. %5</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2 line to visit, %3</source>
        <translation>%1: %2 Anschluss zu besuchen, %3</translation>
    </message>
    <message>
        <source>%1: %2 lines to visit, %3</source>
        <translation>%1: %2 Anschlüsse zu besuchen, %3</translation>
    </message>
    <message>
        <source>%1: %2 or more on this pair is a trouble to clear, not a hazard</source>
        <translation>%1: ab %2 ist es auf dieser Doppelader eine Störung, die zu beseitigen ist, keine Gefahr</translation>
    </message>
    <message>
        <source>%1: %2, not under %3</source>
        <translation>%1: %2, nicht unter %3</translation>
    </message>
    <message>
        <source>%1: %2, over %3</source>
        <translation>%1: %2, über %3</translation>
    </message>
    <message>
        <source>%1: %2, under %3</source>
        <translation>%1: %2, unter %3</translation>
    </message>
    <message>
        <source>%1: %2, within %3</source>
        <translation>%1: %2, nicht über %3</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>%1: %2; %3.</source>
        <translation>%1: %2; %3.</translation>
    </message>
    <message>
        <source>%1: goes along again.</source>
        <translation>%1: geht noch einmal mit.</translation>
    </message>
    <message>
        <source>%1: line %2</source>
        <translation>%1: Zeile %2</translation>
    </message>
    <message>
        <source>%1: measured %2, predicted %3; less by %4, where %5 is within the error</source>
        <translation>%1: gemessen %2, vorausberechnet %3; um %4 kleiner, innerhalb des Fehlers wären %5</translation>
    </message>
    <message>
        <source>%1: measured %2, predicted %3; more by %4, where %5 is within the error</source>
        <translation>%1: gemessen %2, vorausberechnet %3; um %4 größer, innerhalb des Fehlers wären %5</translation>
    </message>
    <message>
        <source>%1: none</source>
        <translation>%1: leer</translation>
    </message>
    <message>
        <source>%1: nothing that counts was recorded.</source>
        <translation>%1: nichts erfasst, was zählt.</translation>
    </message>
    <message>
        <source>%1: row %2</source>
        <translation>%1: Zeile %2</translation>
    </message>
    <message>
        <source>%1: stays.</source>
        <translation>%1: bleibt.</translation>
    </message>
    <message>
        <source>%1: text without a label: %2</source>
        <translation>%1: Text ohne Namen: %2</translation>
    </message>
    <message>
        <source>%1: then %2 dB, %3</source>
        <translation>%1: dann %2 dB, %3</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>%1; %2 s out of synchronisation are left out</source>
        <translation>%1; %2 s ohne Gleichlauf sind nicht mitgerechnet</translation>
    </message>
    <message>
        <source>%1; and %2</source>
        <translation>%1; und %2</translation>
    </message>
    <message>
        <source>%1; if it is measured</source>
        <translation>%1; falls gemessen</translation>
    </message>
    <message>
        <source>%1; left empty: computed</source>
        <translation>%1; leer: berechnet</translation>
    </message>
    <message>
        <source>%1; or %2</source>
        <translation>%1; oder %2</translation>
    </message>
    <message numerus="yes">
        <source>%n are to be confirmed with the provider.</source>
        <translation><numerusform>Eine ist vom Anbieter zu bestätigen.</numerusform><numerusform>%n sind vom Anbieter zu bestätigen.</numerusform></translation>
    </message>
    <message numerus="yes">
        <source>%n are wanted</source>
        <translation><numerusform>verlangt ist %n</numerusform><numerusform>verlangt sind %n</numerusform></translation>
    </message>
    <message numerus="yes">
        <source>%n bit errors</source>
        <translation><numerusform>%n Bitfehler</numerusform><numerusform>%n Bitfehler</numerusform></translation>
    </message>
    <message numerus="yes">
        <source>%n bits</source>
        <translation><numerusform>%n Bit</numerusform><numerusform>%n Bit</numerusform></translation>
    </message>
    <message>
        <source>%n entries</source>
        <translation>%n Eintrag</translation>
    </message>
    <message>
        <source>%n entry</source>
        <translation>%n Eintrag</translation>
    </message>
    <message numerus="yes">
        <source>%n errored seconds</source>
        <translation><numerusform>%n fehlerhafte Sekunde</numerusform><numerusform>%n fehlerhafte Sekunden</numerusform></translation>
    </message>
    <message numerus="yes">
        <source>%n errors</source>
        <translation><numerusform>%n Fehler</numerusform><numerusform>%n Fehler</numerusform></translation>
    </message>
    <message numerus="yes">
        <source>%n losses of synchronisation</source>
        <translation><numerusform>%n Gleichlaufverlust</numerusform><numerusform>%n Gleichlaufverluste</numerusform></translation>
    </message>
    <message numerus="yes">
        <source>%n minutes</source>
        <translation><numerusform>%n Minute</numerusform><numerusform>%n Minuten</numerusform></translation>
    </message>
    <message numerus="yes">
        <source>%n octets</source>
        <translation><numerusform>%n Oktett</numerusform><numerusform>%n Oktette</numerusform></translation>
    </message>
    <message numerus="yes">
        <source>%n s are missing before %1</source>
        <translation><numerusform>%n s fehlt vor %1</numerusform><numerusform>%n s fehlen vor %1</numerusform></translation>
    </message>
    <message numerus="yes">
        <source>%n seconds</source>
        <translation><numerusform>%n Sekunde</numerusform><numerusform>%n Sekunden</numerusform></translation>
    </message>
    <message numerus="yes">
        <source>%n severely errored or unavailable seconds</source>
        <translation><numerusform>%n stark fehlerhafte oder nicht verfügbare Sekunde</numerusform><numerusform>%n stark fehlerhafte oder nicht verfügbare Sekunden</numerusform></translation>
    </message>
    <message numerus="yes">
        <source>%n severely errored seconds</source>
        <translation><numerusform>%n stark fehlerhafte Sekunde</numerusform><numerusform>%n stark fehlerhafte Sekunden</numerusform></translation>
    </message>
    <message numerus="yes">
        <source>%n slips</source>
        <translation><numerusform>%n Schlupf</numerusform><numerusform>%n Schlüpfe</numerusform></translation>
    </message>
    <message numerus="yes">
        <source>%n unavailable seconds</source>
        <translation><numerusform>%n nicht verfügbare Sekunde</numerusform><numerusform>%n nicht verfügbare Sekunden</numerusform></translation>
    </message>
    <message>
        <source>&amp;A4</source>
        <translation>&amp;A4</translation>
    </message>
    <message>
        <source>&amp;About Loopwright</source>
        <translation>Über &amp;Loopwright</translation>
    </message>
    <message>
        <source>&amp;Assign…</source>
        <translation>&amp;Zuweisen…</translation>
    </message>
    <message>
        <source>&amp;Back; between board and job</source>
        <translation>&amp;Zurück; zwischen Tafel und Auftrag</translation>
    </message>
    <message>
        <source>&amp;Bring back…</source>
        <translation>&amp;Zurückbringen…</translation>
    </message>
    <message>
        <source>&amp;Choose…</source>
        <translation>&amp;Wählen…</translation>
    </message>
    <message>
        <source>&amp;Copy   Ctrl+C</source>
        <translation>&amp;Kopieren   Strg+C</translation>
    </message>
    <message>
        <source>&amp;Copy the cell</source>
        <translation>Zelle &amp;kopieren</translation>
    </message>
    <message>
        <source>&amp;Counted</source>
        <translation>Ge&amp;zählt</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Dunkel</translation>
    </message>
    <message>
        <source>&amp;Delete</source>
        <translation>&amp;Löschen</translation>
    </message>
    <message>
        <source>&amp;Export view…</source>
        <translation>Ansicht aus&amp;geben…</translation>
    </message>
    <message>
        <source>&amp;Find an action…</source>
        <translation>Befehl &amp;finden …</translation>
    </message>
    <message>
        <source>&amp;From</source>
        <translation>&amp;Von</translation>
    </message>
    <message>
        <source>&amp;Glossary</source>
        <translation>&amp;Begriffe</translation>
    </message>
    <message>
        <source>&amp;Go</source>
        <translation>&amp;Gehe zu</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>&amp;Hold…</source>
        <translation>An&amp;halten…</translation>
    </message>
    <message>
        <source>&amp;Import a file</source>
        <translation>Datei &amp;einlesen</translation>
    </message>
    <message>
        <source>&amp;Keep this board under a name…</source>
        <translation>Diese &amp;Tafel unter einem Namen speichern…</translation>
    </message>
    <message>
        <source>&amp;Key of this station…</source>
        <translation>&amp;Schlüssel dieser Station…</translation>
    </message>
    <message>
        <source>&amp;Keys</source>
        <translation>&amp;Tastenkürzel</translation>
    </message>
    <message>
        <source>&amp;Last jobs</source>
        <translation>&amp;Letzte Aufträge</translation>
    </message>
    <message>
        <source>&amp;Letter</source>
        <translation>&amp;Letter</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Hell</translation>
    </message>
    <message>
        <source>&amp;Look</source>
        <translation>&amp;Aussehen</translation>
    </message>
    <message>
        <source>&amp;New order</source>
        <translation>&amp;Neuer Auftrag</translation>
    </message>
    <message>
        <source>&amp;None</source>
        <translation>&amp;Keiner</translation>
    </message>
    <message>
        <source>&amp;Open   Enter</source>
        <translation>&amp;Öffnen   Eingabe</translation>
    </message>
    <message>
        <source>&amp;Open other records…</source>
        <translation>&amp;Anderen Datenbestand öffnen …</translation>
    </message>
    <message>
        <source>&amp;Open the job   Enter</source>
        <translation>&amp;Auftrag öffnen   Eingabe</translation>
    </message>
    <message>
        <source>&amp;Paper</source>
        <translation>&amp;Papier</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Drucken …</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>&amp;Read anew</source>
        <translation>&amp;Neu lesen</translation>
    </message>
    <message>
        <source>&amp;Records</source>
        <translation>&amp;Datenbestand</translation>
    </message>
    <message>
        <source>&amp;Rename…</source>
        <translation>&amp;Umbenennen…</translation>
    </message>
    <message>
        <source>&amp;Report</source>
        <translation>A&amp;uswertung</translation>
    </message>
    <message>
        <source>&amp;Resume</source>
        <translation>&amp;Fortsetzen</translation>
    </message>
    <message>
        <source>&amp;Run that is over or goes on</source>
        <translation>&amp;Messlauf, beendet oder im Gang</translation>
    </message>
    <message>
        <source>&amp;Search</source>
        <translation>&amp;Suchen</translation>
    </message>
    <message>
        <source>&amp;Settings…</source>
        <translation>&amp;Einstellungen …</translation>
    </message>
    <message>
        <source>&amp;Settle between stations…</source>
        <translation>Zwischen Stationen k&amp;lären…</translation>
    </message>
    <message>
        <source>&amp;Size</source>
        <translation>&amp;Größe</translation>
    </message>
    <message>
        <source>&amp;Sort by</source>
        <translation>Sortieren &amp;nach</translation>
    </message>
    <message>
        <source>&amp;Take in a bundle…</source>
        <translation>Bündel ü&amp;bernehmen…</translation>
    </message>
    <message>
        <source>&amp;To</source>
        <translation>&amp;Bis</translation>
    </message>
    <message>
        <source>&amp;Try again</source>
        <translation>&amp;Erneut versuchen</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>&amp;Watched folder</source>
        <translation>Überwachter &amp;Ordner</translation>
    </message>
    <message>
        <source>&amp;Who works</source>
        <translation>&amp;Wer arbeitet</translation>
    </message>
    <message>
        <source>(%1 errored typed; each severely errored one counts)</source>
        <translation>(%1 fehlerhafte eingegeben; jede stark fehlerhafte zählt mit)</translation>
    </message>
    <message>
        <source>(empty)</source>
        <translation>(leer)</translation>
    </message>
    <message>
        <source>(not used)</source>
        <translation>(nicht benutzt)</translation>
    </message>
    <message>
        <source>, %1 further issues</source>
        <translation>, %1 weitere Ausfertigungen</translation>
    </message>
    <message>
        <source>, 1 further issue</source>
        <translation>, 1 weitere Ausfertigung</translation>
    </message>
    <message>
        <source>, at risk</source>
        <translation>, gefährdet</translation>
    </message>
    <message>
        <source>, reference %1</source>
        <translation>, Referenz %1</translation>
    </message>
    <message>
        <source>0 to 63 set, 64 to 126 by the network</source>
        <translation>0 bis 63 eingestellt, 64 bis 126 vom Netz</translation>
    </message>
    <message>
        <source>1 certificate will stand no longer.</source>
        <translation>1 Zertifikat wird nicht mehr gelten.</translation>
    </message>
    <message>
        <source>1 circuit</source>
        <translation>1 Anschluss</translation>
    </message>
    <message>
        <source>1 copy of a certificate</source>
        <translation>1 Zertifikatskopie</translation>
    </message>
    <message>
        <source>1 day late</source>
        <translation>seit 1 Tag</translation>
    </message>
    <message>
        <source>1 day list</source>
        <translation>1 Tagesliste</translation>
    </message>
    <message>
        <source>1 entry hangs on it</source>
        <translation>1 Eintrag hängt daran</translation>
    </message>
    <message>
        <source>1 finding; Enter opens its circuit.</source>
        <translation>1 Befund; Eingabe öffnet seinen Anschluss.</translation>
    </message>
    <message>
        <source>1 hazard is open. Keep away from that pair until it is closed and a card reads clear.</source>
        <translation>1 Gefahr ist offen. Von dieser Doppelader fernbleiben, bis sie behoben ist und eine Karte keine Gefahr mehr zeigt.</translation>
    </message>
    <message>
        <source>1 load coil</source>
        <translation>1 Pupinspule</translation>
    </message>
    <message>
        <source>1 loop is in %1.</source>
        <translation>Anschlussleitungen: 1, gespeichert in %1.</translation>
    </message>
    <message>
        <source>1 loop of %1: %2 suitable, %3 marginal, %4 not suitable.</source>
        <translation>Anschlussleitungen von %1: 1, davon %2 geeignet, %3 grenzwertig, %4 nicht geeignet.</translation>
    </message>
    <message>
        <source>1 more is odd</source>
        <translation>1 weitere ist auffällig</translation>
    </message>
    <message>
        <source>1 new entry</source>
        <translation>1 neuer Eintrag</translation>
    </message>
    <message>
        <source>1 order</source>
        <translation>1 Auftrag</translation>
    </message>
    <message>
        <source>1 order is in %1.</source>
        <translation>1 Auftrag steht in %1.</translation>
    </message>
    <message>
        <source>1 order is with a van, which will not know of it until it is home.</source>
        <translation>1 Auftrag ist bei einem Wagen, der davon erst erfährt, wenn der Auftrag zurück ist.</translation>
    </message>
    <message>
        <source>1 reading made with instrument %1</source>
        <translation>1 Messwert mit Messgerät %1 ermittelt</translation>
    </message>
    <message>
        <source>1 row</source>
        <translation>1 Zeile</translation>
    </message>
    <message>
        <source>1 row is in %1.</source>
        <translation>Zeilen: 1, gespeichert in %1.</translation>
    </message>
    <message>
        <source>1 run was made</source>
        <translation>1 Messlauf wurde gemacht</translation>
    </message>
    <message>
        <source>1 second taken from %1.</source>
        <translation>1 Sekunde aus %1 übernommen.</translation>
    </message>
    <message>
        <source>1 settings card</source>
        <translation>1 Einstellungskarte</translation>
    </message>
    <message>
        <source>1 slip for the customer</source>
        <translation>1 Zettel für den Kunden</translation>
    </message>
    <message>
        <source>1 slip for the desk</source>
        <translation>1 Zettel für die Dienststelle</translation>
    </message>
    <message>
        <source>1 thing to settle between stations</source>
        <translation>1 Widerspruch zwischen Stationen zu klären</translation>
    </message>
    <message>
        <source>1 to 127, ITU-T Q.850</source>
        <translation>1 bis 127, ITU-T Q.850</translation>
    </message>
    <message>
        <source>1 where the pattern was lost in it</source>
        <translation>1, wo in ihr das Muster verloren ging</translation>
    </message>
    <message>
        <source>1 … 9, E</source>
        <translation>1 … 9, E</translation>
    </message>
    <message>
        <source>10 digits: 01, number 7, 0</source>
        <translation>10 Ziffern: 01, Nummer 7, 0</translation>
    </message>
    <message>
        <source>10 to 12 digits: number 10, suffix of 0 to 2 digits</source>
        <translation>10 bis 12 Ziffern: Nummer 10, Zusatz von 0 bis 2 Ziffern</translation>
    </message>
    <message>
        <source>12 digits: 01, number 7, 0, terminal id 00-62; or the generic format</source>
        <translation>12 Ziffern: 01, Nummer 7, 0, Endgerätekennung 00-62; oder das allgemeine Format</translation>
    </message>
    <message>
        <source>12 to 14 digits: number 10, suffix, terminal id 00-62; or the generic format</source>
        <translation>12 bis 14 Ziffern: Nummer 10, Zusatz, Endgerätekennung 00-62; oder das allgemeine Format</translation>
    </message>
    <message>
        <source>14 digits in the generic format preferred, any 3 to 20 digits allowed</source>
        <translation>am besten 14 Ziffern im allgemeinen Format, zulässig sind 3 bis 20</translation>
    </message>
    <message>
        <source>14 digits: number 10, sharing id 01-32, terminal id 01-08</source>
        <translation>14 Ziffern: Nummer 10, Sharing-Kennung 01-32, Endgerätekennung 01-08</translation>
    </message>
    <message>
        <source>26 or %1</source>
        <translation>26 oder %1</translation>
    </message>
    <message>
        <source>29 CFR 1910.268(o)(2); 8 CCR 8616(a); the figures: rule on confined spaces, 29 CFR 1910.146(b) (from memory)</source>
        <translation>29 CFR 1910.268(o)(2); 8 CCR 8616(a); die Zahlen: Vorschrift über enge Räume, 29 CFR 1910.146(b) (aus dem Gedächtnis)</translation>
    </message>
    <message>
        <source>5432 unless it is said</source>
        <translation>5432, wenn nichts gesagt wird</translation>
    </message>
    <message>
        <source>5ESS custom, multipoint</source>
        <translation>5ESS custom, Mehrgeräteanschluss</translation>
    </message>
    <message>
        <source>5ESS custom, point-to-point</source>
        <translation>5ESS custom, Anlagenanschluss</translation>
    </message>
    <message>
        <source>64 kbit/s fails on %1 and 56 kbit/s works: the path is restricted, not the line.</source>
        <translation>64 kbit/s misslingt auf %1 und 56 kbit/s gelingt: der Weg ist eingeschränkt, nicht der Anschluss.</translation>
    </message>
    <message>
        <source>7 digits without area code: type all 10 digits</source>
        <translation>7 Ziffern ohne Vorwahl: alle 10 Ziffern eingeben</translation>
    </message>
    <message>
        <source>83 Ill. Adm. Code 730.525(b)</source>
        <translation>83 Ill. Adm. Code 730.525(b)</translation>
    </message>
    <message>
        <source>83 Ill. Adm. Code 730.525(g)</source>
        <translation>83 Ill. Adm. Code 730.525(g)</translation>
    </message>
    <message>
        <source>83 Ill. Adm. Code 730.525(h)</source>
        <translation>83 Ill. Adm. Code 730.525(h)</translation>
    </message>
    <message>
        <source>88</source>
        <translation>88</translation>
    </message>
    <message>
        <source>9000 or 2700 m</source>
        <translation>9000 oder 2700 m</translation>
    </message>
    <message>
        <source>; it has the NI-1 shape of a 5ESS, check the protocol variant</source>
        <translation>; es ist die NI-1-Form einer 5ESS, die Protokollvariante prüfen</translation>
    </message>
    <message>
        <source>; it has the custom multipoint shape of a 5ESS, check the protocol variant</source>
        <translation>; es ist die Custom-Mehrpunktform einer 5ESS, die Protokollvariante prüfen</translation>
    </message>
    <message>
        <source>; it has the generic format of National ISDN, check the protocol variant</source>
        <translation>; es ist das allgemeine Format von National ISDN, die Protokollvariante prüfen</translation>
    </message>
    <message>
        <source>A %1 order is completed without a certificate.</source>
        <translation>Ein solcher Auftrag wird ohne Zertifikat abgeschlossen: %1.</translation>
    </message>
    <message>
        <source>A PIN is a line of %1 to %2 characters.</source>
        <translation>Eine PIN ist eine Zeile von %1 bis %2 Zeichen.</translation>
    </message>
    <message>
        <source>A TEI is "auto" or a number of 0 to 63</source>
        <translation>Ein TEI ist „auto“ oder eine Zahl von 0 bis 63</translation>
    </message>
    <message>
        <source>A TEI of 127 or more cannot belong to a terminal</source>
        <translation>Ein TEI ab 127 kann nicht zu einem Endgerät gehören</translation>
    </message>
    <message>
        <source>A balance of %1 dB does not fit: power influence %2 less noise %3 is %4 dB.</source>
        <translation>Eine Symmetrie von %1 dB passt nicht: Starkstrombeeinflussung %2 minus Geräusch %3 ergibt %4 dB.</translation>
    </message>
    <message>
        <source>A branch of the pair that ends open; it adds loss and no resistance.</source>
        <translation>Ein Abzweig der Doppelader, der offen endet; er bringt Dämpfung und keinen Widerstand.</translation>
    </message>
    <message>
        <source>A bundle lies in the watched folder: %1.</source>
        <translation>Im überwachten Ordner liegt ein Bündel: %1.</translation>
    </message>
    <message>
        <source>A call did not go through.</source>
        <translation>Ein Anruf kam nicht zustande.</translation>
    </message>
    <message>
        <source>A call from one B channel of the line to its other one; it covers this loop and its switch only.</source>
        <translation>Ein Anruf von einem B-Kanal des Anschlusses zu seinem anderen; er erfasst nur diese Anschlussleitung und ihre Vermittlung.</translation>
    </message>
    <message>
        <source>A call from one channel of this line to the other</source>
        <translation>Ein Ruf von einem Kanal dieses Anschlusses zum anderen</translation>
    </message>
    <message>
        <source>A call from one channel of this line to the other covers this loop and its serving switch only.</source>
        <translation>Ein Ruf von einem Kanal dieses Anschlusses zum anderen erfasst nur diese Anschlussleitung und ihre Vermittlungsstelle.</translation>
    </message>
    <message>
        <source>A call to the far end covers the whole path of the call.</source>
        <translation>Ein Anruf zur Gegenstelle erfasst den ganzen Weg der Verbindung.</translation>
    </message>
    <message>
        <source>A call to the serving office's loopback covers this loop and the way to it.</source>
        <translation>Ein Anruf zur Prüfschleife der Vermittlungsstelle erfasst diese Anschlussleitung und den Weg dorthin.</translation>
    </message>
    <message>
        <source>A cancelled order needs a reason.</source>
        <translation>Ein stornierter Auftrag braucht einen Grund.</translation>
    </message>
    <message>
        <source>A cause is a number from 1 to 127.</source>
        <translation>Eine Ursache ist eine Zahl von 1 bis 127.</translation>
    </message>
    <message>
        <source>A change of numbers alone does not need it.</source>
        <translation>Eine reine Änderung der Rufnummern braucht es nicht.</translation>
    </message>
    <message>
        <source>A change of numbers alone needs a card only if somebody goes there.</source>
        <translation>Eine reine Änderung der Rufnummern braucht nur dann eine Karte, wenn jemand hinfährt.</translation>
    </message>
    <message>
        <source>A closing was recorded that does not count: contact with power is closed by a registered supervisor, or with the utility's reference.</source>
        <translation>Ein Abschluss ist eingetragen, der nicht zählt: Berührung mit Starkstrom schließt eine eingetragene Aufsicht ab, oder das Zeichen des Elektrizitätswerks.</translation>
    </message>
    <message>
        <source>A coil in the pair that helps voice over long loops; a single one stops a basic-rate line.</source>
        <translation>Eine Spule in der Doppelader, die der Sprache über lange Leitungen hilft; eine einzige macht einen Basisanschluss unmöglich.</translation>
    </message>
    <message>
        <source>A contact with power is closed by a registered supervisor, or with the utility's reference: neither stands with what was said.</source>
        <translation>Ein Kontakt mit Starkstrom gilt durch eine Aufsicht aus dem Register oder mit der Referenz des Energieversorgers als behoben: beides fehlt in der Angabe.</translation>
    </message>
    <message>
        <source>A contact with power is closed with the utility's reference; without one, by a registered supervisor alone.</source>
        <translation>Ein Kontakt mit Starkstrom gilt mit der Referenz des Energieversorgers als behoben; ohne sie nur durch eine Aufsicht aus dem Register.</translation>
    </message>
    <message>
        <source>A copy of certificate %1 was issued.</source>
        <translation>Eine Kopie von Zertifikat %1 wurde ausgestellt.</translation>
    </message>
    <message>
        <source>A count of the bit errors of a channel over some minutes, second by second.</source>
        <translation>Eine Zählung der Bitfehler eines Kanals über einige Minuten, Sekunde für Sekunde.</translation>
    </message>
    <message>
        <source>A cross with another pair or with power.</source>
        <translation>Eine Berührung mit einer anderen Doppelader oder mit Starkstrom.</translation>
    </message>
    <message>
        <source>A dangerous voltage was read on %1: %2.</source>
        <translation>Eine gefährliche Spannung wurde abgelesen am %1: %2.</translation>
    </message>
    <message>
        <source>A dangerous voltage was read on order %1 and is not closed: keep away.</source>
        <translation>Bei Auftrag %1 wurde eine gefährliche Spannung gemessen, die nicht behoben ist: bitte fernbleiben.</translation>
    </message>
    <message>
        <source>A dangerous voltage was read on the pair of wires. Leave the jack, the NT and the wires alone until you are told that it is gone.</source>
        <translation>An der Doppelader wurde eine gefährliche Spannung abgelesen. Lassen Sie Dose, NT und Adern in Ruhe, bis man Ihnen sagt, dass sie weg ist.</translation>
    </message>
    <message>
        <source>A dangerous voltage was read on the pair, and its cause was closed; after that no reading was above the stop limits.</source>
        <translation>An der Doppelader wurde eine gefährliche Spannung gemessen und ihre Ursache behoben; danach lag kein Messwert über den Stoppgrenzen.</translation>
    </message>
    <message>
        <source>A dangerous voltage was read on the pair.</source>
        <translation>An der Doppelader wurde eine gefährliche Spannung gemessen.</translation>
    </message>
    <message>
        <source>A dangerous voltage was read on the pair; the check that it is gone is still to be made.</source>
        <translation>An der Doppelader wurde eine gefährliche Spannung gemessen; die Prüfung, dass sie fort ist, steht noch aus.</translation>
    </message>
    <message>
        <source>A day is typed as 2026-12-01.</source>
        <translation>Einen Tag so eingeben: 2026-12-01.</translation>
    </message>
    <message>
        <source>A disconnect needs no evidence.</source>
        <translation>Eine Abschaltung braucht keine Nachweise.</translation>
    </message>
    <message>
        <source>A fact is voided with a reason.</source>
        <translation>Ein Eintrag wird mit einem Grund für ungültig erklärt.</translation>
    </message>
    <message>
        <source>A fault of a line in service, kept as an order of the type repair until it is closed: what was found, what cleared it, the cause.</source>
        <translation>Ein Fehler an einem Anschluss in Betrieb, geführt als Auftrag der Art Entstörung, bis er geschlossen ist: was gefunden wurde, was ihn behob, die Ursache.</translation>
    </message>
    <message>
        <source>A figure is met when it is within the limit as read; the uncertainty of the instrument is stated where it is known and is not added to it.</source>
        <translation>Ein Wert ist erfüllt, wenn er wie abgelesen innerhalb des Grenzwerts liegt; die Unsicherheit des Messgeräts ist angegeben, wo sie bekannt ist, und wird nicht hinzugerechnet.</translation>
    </message>
    <message>
        <source>A folder for the circuit's file</source>
        <translation>Ordner für die Akte des Anschlusses</translation>
    </message>
    <message>
        <source>A foreign voltage is to be cleared.</source>
        <translation>Eine Fremdspannung ist zu beseitigen.</translation>
    </message>
    <message>
        <source>A hazard is open on this pair.</source>
        <translation>An dieser Doppelader ist eine Gefahr offen.</translation>
    </message>
    <message>
        <source>A job that is not accepted, to read aloud or print</source>
        <translation>Ein Auftrag, der nicht abgenommen ist, zum Vorlesen oder Drucken</translation>
    </message>
    <message>
        <source>A joint of high resistance, or a leak, in one of the two wires.</source>
        <translation>Eine hochohmige Spleißstelle oder ein Isolationsfehler in einer der beiden Adern.</translation>
    </message>
    <message>
        <source>A later row released it.</source>
        <translation>Eine spätere Zeile hat es freigegeben.</translation>
    </message>
    <message>
        <source>A line of North America has a number of country code 1</source>
        <translation>Ein nordamerikanischer Anschluss hat eine Rufnummer mit der Landeskennzahl 1</translation>
    </message>
    <message>
        <source>A line on which several terminals have each a TEI of their own; on a point-to-point line one piece of equipment takes all numbers over one link.</source>
        <translation>Ein Anschluss, an dem mehrere Endgeräte je einen eigenen TEI haben; an einem Anlagenanschluss nimmt eine Anlage alle Rufnummern über eine Verbindung.</translation>
    </message>
    <message>
        <source>A list</source>
        <translation>Eine Liste</translation>
    </message>
    <message>
        <source>A list of the set; it is no certificate</source>
        <translation>Eine Liste der Sammlung; sie ist kein Zertifikat</translation>
    </message>
    <message>
        <source>A little noise can be heard while nobody speaks.</source>
        <translation>Ein leises Geräusch ist zu hören, wenn niemand spricht.</translation>
    </message>
    <message>
        <source>A loss of %1 dB cannot be: a pair of wires does not amplify.</source>
        <translation>Eine Dämpfung von %1 dB ist unmöglich: eine Doppelader verstärkt nicht.</translation>
    </message>
    <message>
        <source>A loss of %1 dB without its frequency says nothing.</source>
        <translation>Eine Dämpfung von %1 dB ohne Frequenz sagt nichts.</translation>
    </message>
    <message>
        <source>A make-up cannot be read.</source>
        <translation>Ein Leitungsaufbau lässt sich nicht lesen.</translation>
    </message>
    <message>
        <source>A measured loss would tell more.</source>
        <translation>Eine gemessene Dämpfung würde mehr sagen.</translation>
    </message>
    <message>
        <source>A measured resistance would tell length from taps.</source>
        <translation>Ein gemessener Widerstand würde Länge und Stichleitungen unterscheiden.</translation>
    </message>
    <message>
        <source>A move within the premises leaves the loop as it is.</source>
        <translation>Ein Umzug innerhalb des Grundstücks lässt die Anschlussleitung, wie sie ist.</translation>
    </message>
    <message>
        <source>A network of another kind said so: call an ISDN number at home.</source>
        <translation>Ein Netz anderer Art meldet es: eine ISDN-Rufnummer im Inland anrufen.</translation>
    </message>
    <message>
        <source>A network on the way said so: report it to the office, this line is not at fault.</source>
        <translation>Ein Netz auf dem Weg meldet es: der Vermittlungsstelle melden, an diesem Anschluss liegt es nicht.</translation>
    </message>
    <message>
        <source>A number of the serving office that sends back what it hears; for installers only, never on a customer's paper.</source>
        <translation>Eine Rufnummer der Vermittlungsstelle, die zurücksendet, was sie hört; nur für Monteure, nie auf einem Papier für Kunden.</translation>
    </message>
    <message>
        <source>A number or identifier is wrong, or another line has it.</source>
        <translation>Eine Rufnummer oder Kennung ist falsch, oder ein anderer Anschluss hat sie.</translation>
    </message>
    <message>
        <source>A number that the provider assigns to a terminal, which sends it when it starts so that the switch finds its services; used in North America, never dialled.</source>
        <translation>Eine Nummer, die der Anbieter einem Endgerät zuweist; es sendet sie beim Start, damit die Vermittlung seine Dienste findet; üblich in Nordamerika, nie gewählt.</translation>
    </message>
    <message>
        <source>A point-to-point line has no automatic TEI: set 0</source>
        <translation>Ein Punkt-zu-Punkt-Anschluss hat keinen automatischen TEI: 0 einstellen</translation>
    </message>
    <message>
        <source>A port is a number from 1 to 65535.</source>
        <translation>Ein Port ist eine Zahl von 1 bis 65535.</translation>
    </message>
    <message>
        <source>A priority call took the channel: try again</source>
        <translation>Eine bevorrechtigte Verbindung hat den Kanal genommen: noch einmal versuchen</translation>
    </message>
    <message>
        <source>A record-only order needs its identifiers alone.</source>
        <translation>Ein Auftrag nur für den Datenbestand braucht allein seine Kennungen.</translation>
    </message>
    <message>
        <source>A repair assigns no numbers.</source>
        <translation>Eine Entstörung weist keine Rufnummern zu.</translation>
    </message>
    <message>
        <source>A repair changes nothing of the line: pair, numbers and services are changed by an order of the type change.</source>
        <translation>Eine Entstörung ändert nichts an der Leitung: Doppelader, Rufnummern und Dienste ändert ein Auftrag der Art Änderung.</translation>
    </message>
    <message>
        <source>A repair keeps its symptom.</source>
        <translation>Eine Entstörung behält ihr Symptom.</translation>
    </message>
    <message>
        <source>A repair stays a repair.</source>
        <translation>Eine Entstörung bleibt eine Entstörung.</translation>
    </message>
    <message>
        <source>A repair stays with its circuit.</source>
        <translation>Eine Entstörung bleibt bei ihrem Anschluss.</translation>
    </message>
    <message>
        <source>A resistance of %1 ohm cannot be: wires have some.</source>
        <translation>Ein Widerstand von %1 Ohm ist unmöglich: Adern haben immer einen.</translation>
    </message>
    <message>
        <source>A row that cannot be taken in is named with its column and reason; one whose numbers are in error or taken stays on the board, held, until the order is changed.</source>
        <translation>Eine Zeile, die nicht aufgenommen werden kann, wird mit Spalte und Grund genannt; eine mit fehlerhaften oder vergebenen Kennungen steht zurückgehalten auf der Tafel, bis der Auftrag geändert ist.</translation>
    </message>
    <message>
        <source>A run before it failed and nothing was found: then only a run without any error counts.</source>
        <translation>Ein Messlauf davor wurde nicht bestanden, und nichts wurde gefunden: dann zählt nur ein Messlauf ganz ohne Fehler.</translation>
    </message>
    <message>
        <source>A run before it failed, and nothing between them says what was done.</source>
        <translation>Ein Messlauf davor wurde nicht bestanden, und nichts dazwischen sagt, was getan wurde.</translation>
    </message>
    <message>
        <source>A run is counting or waits to be recorded: record it first.</source>
        <translation>Ein Messlauf zählt oder wartet auf das Erfassen: Erfassen Sie ihn zuerst.</translation>
    </message>
    <message>
        <source>A run needs a detector check of this visit, over its channels and path and with its instrument, that no other run has used up.</source>
        <translation>Ein Messlauf braucht eine Erkennungsprüfung dieses Einsatzes, über seine Kanäle und seinen Weg und mit seinem Messgerät, die kein anderer Messlauf verbraucht hat.</translation>
    </message>
    <message>
        <source>A second in which one bit of a thousand or more was wrong, or the pattern was lost; it is an errored second too.</source>
        <translation>Eine Sekunde, in der mindestens ein Bit von tausend falsch war oder das Muster verloren ging; sie ist auch eine fehlerhafte Sekunde.</translation>
    </message>
    <message>
        <source>A second with at least one bit error (G.821).</source>
        <translation>Eine Sekunde mit mindestens einem Bitfehler (G.821).</translation>
    </message>
    <message>
        <source>A secret key has 32 bytes.</source>
        <translation>Ein geheimer Schlüssel hat 32 Byte.</translation>
    </message>
    <message>
        <source>A self-call covers this loop and its serving switch only.</source>
        <translation>Ein Selbstanruf erfasst nur diese Anschlussleitung und ihre Vermittlung.</translation>
    </message>
    <message>
        <source>A self-call needs two channels that carry data and two numbers that may call each other; this order has not both, so the test line or the far end is the path.</source>
        <translation>Ein Selbstanruf braucht zwei Kanäle, die Daten tragen, und zwei Rufnummern, die einander anrufen dürfen; dieser Auftrag hat nicht beides, daher führt der Weg über den Prüfanschluss oder die Gegenstelle.</translation>
    </message>
    <message>
        <source>A small direct current that an office may send over a basic-rate loop to keep its joints good; a loop that carries one is called wet, any other dry.</source>
        <translation>Ein kleiner Gleichstrom, den eine Vermittlungsstelle über die Leitung eines Basisanschlusses schicken kann, damit die Spleiße gut bleiben; eine Leitung mit ihm heißt benetzt, jede andere trocken.</translation>
    </message>
    <message>
        <source>A small voltage from elsewhere is on the pair and is to be cleared.</source>
        <translation>Eine kleine Spannung von anderswo liegt auf der Doppelader und ist zu beseitigen.</translation>
    </message>
    <message>
        <source>A small voltage from elsewhere is on the pair.</source>
        <translation>Auf der Doppelader liegt eine kleine fremde Spannung.</translation>
    </message>
    <message>
        <source>A spreadsheet made a quantity of the number and its last digits are lost: take it from the provider's order</source>
        <translation>Eine Tabellenkalkulation hat aus der Nummer eine Zahl gemacht, die letzten Ziffern sind verloren: aus dem Auftrag des Anbieters übernehmen</translation>
    </message>
    <message>
        <source>A spreadsheet made a quantity of the number: format the column as text</source>
        <translation>Eine Tabellenkalkulation hat aus der Nummer eine Zahl gemacht: die Spalte als Text formatieren</translation>
    </message>
    <message>
        <source>A station that takes orders along, works without a network, and brings back what was done.</source>
        <translation>Eine Station, die Aufträge mitnimmt, ohne Netz arbeitet und zurückbringt, was getan wurde.</translation>
    </message>
    <message>
        <source>A terminal has no address on the line, or a wrong one.</source>
        <translation>Ein Endgerät hat keine oder eine falsche Adresse am Anschluss.</translation>
    </message>
    <message>
        <source>A terminal said so, the far one or the line's own: look at its settings and services.</source>
        <translation>Ein Endgerät meldet es, das ferne oder das eigene am Anschluss: seine Einstellungen und Dienste ansehen.</translation>
    </message>
    <message>
        <source>A test set is not known, or was not within its calibration.</source>
        <translation>Ein Prüfgerät ist nicht bekannt oder war nicht gültig kalibriert.</translation>
    </message>
    <message>
        <source>A time is typed as 8:14.</source>
        <translation>Eine Uhrzeit so eingeben: 8:14.</translation>
    </message>
    <message>
        <source>A trouble is closed with what was found.</source>
        <translation>Eine Störung wird mit dem Befund abgeschlossen.</translation>
    </message>
    <message>
        <source>A trouble is opened with its symptom.</source>
        <translation>Eine Störung wird mit ihrem Fehlerbild eröffnet.</translation>
    </message>
    <message>
        <source>A trouble within 30 days of the last one that was closed on the same circuit.</source>
        <translation>Eine Störung innerhalb von 30 Tagen nach der letzten, die am selben Anschluss geschlossen wurde.</translation>
    </message>
    <message>
        <source>A voice arrives a little faint.</source>
        <translation>Eine Stimme kommt etwas leise an.</translation>
    </message>
    <message>
        <source>A voice arrives loud enough.</source>
        <translation>Eine Stimme kommt laut genug an.</translation>
    </message>
    <message>
        <source>A voice arrives too faint, or too loud.</source>
        <translation>Eine Stimme kommt zu leise oder zu laut an.</translation>
    </message>
    <message>
        <source>A void is not voided; record the fact anew.</source>
        <translation>Eine Ungültigerklärung wird nicht für ungültig erklärt; bitte den Eintrag neu erfassen.</translation>
    </message>
    <message>
        <source>A voltage from elsewhere is on the pair.</source>
        <translation>Auf der Doppelader liegt eine fremde Spannung.</translation>
    </message>
    <message>
        <source>A voltage from elsewhere is on the pair: it is not worked on until that is cleared.</source>
        <translation>Auf der Doppelader liegt eine fremde Spannung: bis sie beseitigt ist, wird nicht daran gearbeitet.</translation>
    </message>
    <message>
        <source>A wet joint or a damaged drop.</source>
        <translation>Eine feuchte Spleißstelle oder eine beschädigte Hauszuführung.</translation>
    </message>
    <message>
        <source>A working pair carries 42 to 53 V of direct current, and ringing puts about 90 V of alternating current at 20 Hz on top: enough to hurt, and on a ladder to make you fall. Line-powered extension equipment of digital lines puts up to 190 V, and coin lines 130 V, between the wires. Basic-rate lines may carry a small sealing current.</source>
        <translation>Eine beschaltete Doppelader führt 42 bis 53 V Gleichspannung, und der Ruf legt etwa 90 V Wechselspannung mit 20 Hz darüber: genug, um wehzutun und auf einer Leiter zum Sturz zu führen. Ferngespeiste Verlängerungen digitaler Leitungen legen bis zu 190 V, Münzfernsprecher 130 V zwischen die Adern. Basisanschlüsse können einen kleinen Frittstrom führen.</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>AC</source>
        <translation>AC</translation>
    </message>
    <message>
        <source>AC voltage</source>
        <translation>Wechselspannung</translation>
    </message>
    <message>
        <source>AC voltage, %1</source>
        <translation>Wechselspannung, %1</translation>
    </message>
    <message>
        <source>About &amp;Qt…</source>
        <translation>Über &amp;Qt …</translation>
    </message>
    <message>
        <source>About Loopwright</source>
        <translation>Über Loopwright</translation>
    </message>
    <message>
        <source>About to be taken in: %1. Signatures are checked first; nothing that is here gets lost.</source>
        <translation>Wird übernommen: %1. Zuerst werden die Signaturen geprüft; nichts, was hier ist, geht verloren.</translation>
    </message>
    <message>
        <source>Accept with this exception</source>
        <translation>Mit dieser Ausnahme abnehmen</translation>
    </message>
    <message>
        <source>Acceptance</source>
        <translation>Abnahme</translation>
    </message>
    <message>
        <source>Acceptance on the first visit</source>
        <translation>Abnahme beim ersten Einsatz</translation>
    </message>
    <message>
        <source>Accepted</source>
        <translation>Abgenommen</translation>
    </message>
    <message>
        <source>Accepted by %1 on %2</source>
        <translation>Abgenommen durch %1 am %2</translation>
    </message>
    <message>
        <source>Accepted by %1 on %2: %3</source>
        <translation>Abgenommen durch %1 am %2: %3</translation>
    </message>
    <message>
        <source>Accepted by exception</source>
        <translation>Mit Ausnahme abgenommen</translation>
    </message>
    <message>
        <source>Accepted orders by the day of acceptance, repairs apart, and how many of them have all their evidence from one visit. What needs no visit counts as accepted.</source>
        <translation>Abgenommene Aufträge nach dem Tag der Abnahme, ohne Entstörungen, und wie viele davon alle Nachweise aus einem Einsatz haben. Was keinen Einsatz braucht, zählt als abgenommen.</translation>
    </message>
    <message>
        <source>Accepted with exception</source>
        <translation>Mit Ausnahme abgenommen</translation>
    </message>
    <message>
        <source>Accepted with exception.</source>
        <translation>Mit Ausnahme abgenommen.</translation>
    </message>
    <message>
        <source>Accepted: every criterion is met or not needed.</source>
        <translation>Abgenommen: Jedes Kriterium ist erfüllt oder nicht nötig.</translation>
    </message>
    <message>
        <source>Accepted; its certificate is not issued</source>
        <translation>Abgenommen; Zertifikat nicht ausgestellt</translation>
    </message>
    <message>
        <source>Access</source>
        <translation>Zugang</translation>
    </message>
    <message>
        <source>Access information discarded</source>
        <translation>Zugangsinformation verworfen</translation>
    </message>
    <message>
        <source>Access: %1</source>
        <translation>Zugang: %1</translation>
    </message>
    <message>
        <source>Action</source>
        <translation>Befehl</translation>
    </message>
    <message>
        <source>Actions</source>
        <translation>Befehle</translation>
    </message>
    <message>
        <source>Add a terminal</source>
        <translation>Endgerät hinzufügen</translation>
    </message>
    <message>
        <source>Add a van…</source>
        <translation>Wagen hinzufügen…</translation>
    </message>
    <message>
        <source>Add an order   Ctrl+N</source>
        <translation>Auftrag anlegen   Strg+N</translation>
    </message>
    <message>
        <source>Add an order, or change one</source>
        <translation>Einen Auftrag anlegen oder ändern</translation>
    </message>
    <message>
        <source>Add the van</source>
        <translation>Wagen hinzufügen</translation>
    </message>
    <message>
        <source>Address</source>
        <translation>Anschrift</translation>
    </message>
    <message>
        <source>After a failed self-test nothing counts that the instrument measured on this visit, until one passes: use another one, or have it pass.</source>
        <translation>Nach einem nicht bestandenen Selbsttest zählt nichts, was das Messgerät bei diesem Einsatz gemessen hat, bis einer bestanden ist: ein anderes nehmen oder den Selbsttest bestehen lassen.</translation>
    </message>
    <message>
        <source>Against it</source>
        <translation>Dagegen</translation>
    </message>
    <message>
        <source>Against the make-up on record: %1</source>
        <translation>Gegenüber dem erfassten Leitungsaufbau: %1</translation>
    </message>
    <message>
        <source>Age of open orders</source>
        <translation>Alter offener Aufträge</translation>
    </message>
    <message>
        <source>All %1 calls went through.</source>
        <translation>Alle %1 Anrufe kamen zustande.</translation>
    </message>
    <message>
        <source>All installers</source>
        <translation>Alle Monteure</translation>
    </message>
    <message>
        <source>All lines at these premises</source>
        <translation>Alle Anschlüsse auf diesem Grundstück</translation>
    </message>
    <message>
        <source>All lines of an office at once</source>
        <translation>Alle Leitungen einer Vermittlungsstelle auf einmal</translation>
    </message>
    <message>
        <source>All lines of the office changed: %1</source>
        <translation>Alle Anschlüsse der Vermittlungsstelle geändert: %1</translation>
    </message>
    <message>
        <source>All of them are completed or cancelled.</source>
        <translation>Alle sind abgeschlossen oder storniert.</translation>
    </message>
    <message>
        <source>All rows go in as one change: until it is done nobody else can write.</source>
        <translation>Alle Zeilen werden als eine Änderung übernommen: Bis sie fertig ist, kann niemand sonst schreiben.</translation>
    </message>
    <message>
        <source>All that must be there is there.</source>
        <translation>Alles Nötige ist da.</translation>
    </message>
    <message>
        <source>Also at these premises</source>
        <translation>Auch auf diesem Grundstück</translation>
    </message>
    <message>
        <source>Also at these premises (F7): %1</source>
        <translation>Auch auf diesem Grundstück (F7): %1</translation>
    </message>
    <message>
        <source>Also what another van has</source>
        <translation>Auch was ein anderer Wagen hat</translation>
    </message>
    <message>
        <source>Altered. %1</source>
        <translation>Verändert. %1</translation>
    </message>
    <message>
        <source>Alternating voltage that stops the work in a wet place, above</source>
        <translation>Wechselspannung, die an einem nassen Ort die Arbeit anhält, über</translation>
    </message>
    <message>
        <source>Alternating voltage that stops the work, above</source>
        <translation>Wechselspannung, die die Arbeit anhält, über</translation>
    </message>
    <message>
        <source>An ISDN line over one pair: two B channels for calls and a D channel.</source>
        <translation>Ein ISDN-Anschluss über eine Doppelader: zwei B-Kanäle für Anrufe und ein D-Kanal.</translation>
    </message>
    <message>
        <source>An analog line has no cause codes</source>
        <translation>Ein analoger Anschluss hat keine Ursachenwerte</translation>
    </message>
    <message>
        <source>An analog line has one directory number</source>
        <translation>Ein analoger Anschluss hat eine Rufnummer</translation>
    </message>
    <message>
        <source>An apostrophe stands in front, a spreadsheet's mark of text: leave it out</source>
        <translation>Vorn steht ein Apostroph, das Textzeichen einer Tabellenkalkulation: weglassen</translation>
    </message>
    <message>
        <source>An event is not what its digest says.</source>
        <translation>Ein Ereignis ist nicht das, was seine Prüfsumme sagt.</translation>
    </message>
    <message>
        <source>An exception needs a reason.</source>
        <translation>Eine Ausnahme braucht einen Grund.</translation>
    </message>
    <message>
        <source>An exception needs the name of a supervisor.</source>
        <translation>Eine Ausnahme braucht den Namen der Aufsicht.</translation>
    </message>
    <message>
        <source>An insulation test puts high voltage on the pair: warn others, disconnect the equipment at both ends, discharge the pair afterwards.</source>
        <translation>Eine Isolationsmessung legt hohe Spannung auf die Doppelader: andere warnen, Geräte an beiden Enden abtrennen, die Doppelader danach entladen.</translation>
    </message>
    <message>
        <source>An office keeps its records on a PostgreSQL server, and every desk sees at once what another one does. Who keeps the server says what stands here.</source>
        <translation>Ein Büro hält seinen Datenbestand auf einem PostgreSQL-Server, und jeder Platz sieht sofort, was ein anderer tut. Wer den Server betreut, sagt, was hier steht.</translation>
    </message>
    <message>
        <source>An order %1 was made here, of circuit %2, and the office has one of circuit %3. Enter the one that was made here under its right number, record its work anew, and cancel the wrong one.</source>
        <translation>Hier wurde ein Auftrag %1 für Leitung %2 angelegt, und das Büro hat einen für Leitung %3. Geben Sie den hier angelegten unter seiner richtigen Nummer ein, halten Sie die Arbeit noch einmal fest, und stornieren Sie den falschen.</translation>
    </message>
    <message>
        <source>An order is not made a repair afterwards.</source>
        <translation>Ein Auftrag wird nicht nachträglich zur Entstörung.</translation>
    </message>
    <message>
        <source>An order keeps its number.</source>
        <translation>Ein Auftrag behält seine Nummer.</translation>
    </message>
    <message>
        <source>An order of this number is there</source>
        <translation>Ein Auftrag mit dieser Nummer ist vorhanden</translation>
    </message>
    <message>
        <source>An order that waits needs a reason.</source>
        <translation>Ein Auftrag, der wartet, braucht einen Grund.</translation>
    </message>
    <message>
        <source>An order whose numbers are in error or belong to another circuit: it is on the board, and holds no number, SPID or pair until that is mended.</source>
        <translation>Ein Auftrag, dessen Kennungen fehlerhaft sind oder einem anderen Anschluss gehören: er steht auf der Tafel und belegt keine Rufnummer, SPID oder Doppelader, bis das behoben ist.</translation>
    </message>
    <message>
        <source>An ordinary telephone line: one voice channel over one pair that the office feeds.</source>
        <translation>Ein gewöhnlicher Telefonanschluss: ein Sprachkanal über eine Doppelader, die die Vermittlungsstelle speist.</translation>
    </message>
    <message>
        <source>Analog</source>
        <translation>Analog</translation>
    </message>
    <message>
        <source>Analog line</source>
        <translation>Analoger Anschluss</translation>
    </message>
    <message>
        <source>And %1 more.</source>
        <translation>Und %1 weitere.</translation>
    </message>
    <message>
        <source>Announced number</source>
        <translation>Angesagte Rufnummer</translation>
    </message>
    <message>
        <source>Announced number asked for on every order (1) or only where recorded (0)</source>
        <translation>Angesagte Nummer bei jedem Auftrag verlangt (1) oder nur, wo sie aufgezeichnet ist (0)</translation>
    </message>
    <message>
        <source>Another &amp;day…</source>
        <translation>&amp;Umterminieren…</translation>
    </message>
    <message>
        <source>Another bulk change was made since then, or this one was taken back.</source>
        <translation>Seither gab es eine weitere Sammeländerung, oder diese wurde zurückgenommen.</translation>
    </message>
    <message>
        <source>Another day</source>
        <translation>Umterminieren</translation>
    </message>
    <message>
        <source>Another program is writing in the records: wait until it is done, or close it, and try again.</source>
        <translation>Ein anderes Programm schreibt gerade in den Datenbestand: warten, bis es fertig ist, oder es schließen, und erneut versuchen.</translation>
    </message>
    <message>
        <source>Answer the open question first.</source>
        <translation>Zuerst die offene Frage beantworten.</translation>
    </message>
    <message>
        <source>Answers</source>
        <translation>Antwortet auf</translation>
    </message>
    <message>
        <source>Any criterion</source>
        <translation>Jedes Kriterium</translation>
    </message>
    <message>
        <source>Any outcome</source>
        <translation>Jedes Ergebnis</translation>
    </message>
    <message>
        <source>Appointment</source>
        <translation>Termin</translation>
    </message>
    <message>
        <source>Appointment: %1</source>
        <translation>Termin: %1</translation>
    </message>
    <message>
        <source>Are both B channels busy? Otherwise trunks are full: try again</source>
        <translation>Sind beide B-Kanäle belegt? Sonst sind die Bündel voll: noch einmal versuchen</translation>
    </message>
    <message>
        <source>Are the counters cleared?</source>
        <translation>Sind die Zähler gelöscht?</translation>
    </message>
    <message>
        <source>Area code</source>
        <translation>Vorwahl</translation>
    </message>
    <message>
        <source>Area code %1 %2: confirm it with the provider</source>
        <translation>Vorwahl %1 %2: beim Anbieter bestätigen lassen</translation>
    </message>
    <message>
        <source>Area code %1 %2: confirm it with the provider.</source>
        <translation>Vorwahl %1 %2: beim Anbieter bestätigen lassen.</translation>
    </message>
    <message>
        <source>Area code %1 (%2) cannot be, it begins with 2 to 9%3</source>
        <translation>Vorwahl %1 (%2) ist nicht möglich, sie beginnt mit 2 bis 9%3</translation>
    </message>
    <message>
        <source>Area code %1 (%2) cannot be, it is a service number</source>
        <translation>Vorwahl %1 (%2) ist nicht möglich: eine Sondernummer</translation>
    </message>
    <message>
        <source>Area code %1 (%2) is held for expansion and not given out: confirm it with the provider</source>
        <translation>Vorwahl %1 (%2) ist für Erweiterungen zurückgehalten und nicht vergeben: beim Anbieter bestätigen lassen</translation>
    </message>
    <message>
        <source>Area code %1 is held for expansion and not given out: confirm it with the provider.</source>
        <translation>Vorwahl %1 ist für Erweiterungen zurückgehalten und nicht vergeben: beim Anbieter bestätigen lassen.</translation>
    </message>
    <message>
        <source>Area code %1 of office %2 became %3</source>
        <translation>Vorwahl %1 der Vermittlungsstelle %2 wurde zu %3</translation>
    </message>
    <message>
        <source>Area code %1 of office %2 to %3</source>
        <translation>Vorwahl %1 der Vermittlungsstelle %2 zu %3</translation>
    </message>
    <message>
        <source>Arrived at</source>
        <translation>Angekommen um</translation>
    </message>
    <message>
        <source>As in this &amp;country</source>
        <translation>Wie in diesem &amp;Land</translation>
    </message>
    <message>
        <source>As labelled, until the office confirms it: %1.</source>
        <translation>Laut Etikett, bis das Büro es bestätigt: %1.</translation>
    </message>
    <message>
        <source>As tested</source>
        <translation>Wie geprüft</translation>
    </message>
    <message>
        <source>As the &amp;system</source>
        <translation>Wie das S&amp;ystem</translation>
    </message>
    <message>
        <source>Ask for any channel; look for a B channel that hangs</source>
        <translation>Einen beliebigen Kanal verlangen; nach einem hängenden B-Kanal suchen</translation>
    </message>
    <message>
        <source>Ask the serving office for an unrestricted path.</source>
        <translation>Bei der Vermittlungsstelle einen uneingeschränkten Weg verlangen.</translation>
    </message>
    <message>
        <source>Assign</source>
        <translation>Zuweisen</translation>
    </message>
    <message>
        <source>At S/T, behind the NT</source>
        <translation>An S/T, hinter dem NT</translation>
    </message>
    <message>
        <source>At U, on the pair</source>
        <translation>An U, an der Doppelader</translation>
    </message>
    <message>
        <source>At each pair: prove the meter, measure to ground and across before you touch it, and treat it as live whatever it read. Thunder near: stop.</source>
        <translation>An jeder Doppelader: Messgerät prüfen, gegen Erde und zwischen den Adern messen, bevor Sie sie berühren, und sie als spannungsführend behandeln, was immer Sie ablasen. Gewitter in der Nähe: aufhören.</translation>
    </message>
    <message>
        <source>At risk</source>
        <translation>Gefährdet</translation>
    </message>
    <message>
        <source>At risk: due within two working days, and not accepted. %1</source>
        <translation>Gefährdet: in zwei Arbeitstagen fällig und nicht abgenommen. %1</translation>
    </message>
    <message>
        <source>At start-up: the SPID is wrong. Otherwise check the digits of number and bearer</source>
        <translation>Beim Start: die SPID ist falsch. Sonst die Ziffern der Rufnummer und den Übermittlungsdienst prüfen</translation>
    </message>
    <message>
        <source>At the desk</source>
        <translation>Dienststelle</translation>
    </message>
    <message>
        <source>Audit</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>Audit of identifiers</source>
        <translation>Prüfung der Kennungen</translation>
    </message>
    <message>
        <source>Away</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <source>B channel</source>
        <translation>B-Kanal</translation>
    </message>
    <message>
        <source>B1, B2</source>
        <translation>B1, B2</translation>
    </message>
    <message>
        <source>BER</source>
        <translation>BER</translation>
    </message>
    <message>
        <source>BRI, basic-rate line</source>
        <translation>BRI, ISDN-Basisanschluss</translation>
    </message>
    <message>
        <source>Back   Esc</source>
        <translation>Zurück   Esc</translation>
    </message>
    <message>
        <source>Back to the job</source>
        <translation>Zurück zum Auftrag</translation>
    </message>
    <message>
        <source>Backspace</source>
        <translation>Rücktaste</translation>
    </message>
    <message>
        <source>Balance</source>
        <translation>Symmetrie</translation>
    </message>
    <message>
        <source>Balance (power influence less noise), good from</source>
        <translation>Symmetrie (Starkstrombeeinflussung minus Geräusch), gut ab</translation>
    </message>
    <message>
        <source>Balance (power influence less noise), marginal from</source>
        <translation>Symmetrie (Starkstrombeeinflussung minus Geräusch), grenzwertig ab</translation>
    </message>
    <message>
        <source>Basic rate</source>
        <translation>Basisanschluss</translation>
    </message>
    <message>
        <source>Basic rate (2B+D)</source>
        <translation>Basisanschluss (2B+D)</translation>
    </message>
    <message>
        <source>Bearer capability not authorised</source>
        <translation>Übermittlungsdienst nicht berechtigt</translation>
    </message>
    <message>
        <source>Bearer capability not implemented</source>
        <translation>Übermittlungsdienst nicht implementiert</translation>
    </message>
    <message>
        <source>Bearer capability not presently available</source>
        <translation>Übermittlungsdienst zurzeit nicht verfügbar</translation>
    </message>
    <message>
        <source>Because</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>Before climbing a wood pole</source>
        <translation>Vor dem Besteigen eines Holzmasts</translation>
    </message>
    <message>
        <source>Before the errors were sent there were %1 quiet seconds; at least %2 s are needed.</source>
        <translation>Ruhige Sekunden vor dem Einfügen der Fehler: %1; nötig sind mindestens %2 s.</translation>
    </message>
    <message>
        <source>Before work on a pair that carries power for equipment along the way have it turned off and tagged at its source, and prove the pair dead with the meter. Restore it hands off; measure at guarded points.</source>
        <translation>Vor der Arbeit an einer Doppelader, die Geräte unterwegs speist, die Speisung an der Quelle abschalten und kennzeichnen lassen und mit dem Messgerät prüfen, dass die Doppelader spannungsfrei ist. Beim Wiedereinschalten nichts berühren; an geschützten Punkten messen.</translation>
    </message>
    <message>
        <source>Begin at the lowest layer that is down: the pair for layer 1, the TEI for layer 2, SPID and protocol variant for layer 3.</source>
        <translation>Bei der untersten Schicht beginnen, die nicht aktiv ist: bei Schicht 1 die Doppelader, bei Schicht 2 der TEI, bei Schicht 3 SPID und Protokollvariante.</translation>
    </message>
    <message>
        <source>Behind the + a country code and a number are needed</source>
        <translation>Nach dem + sind Landeskennzahl und Rufnummer nötig</translation>
    </message>
    <message>
        <source>Beside it, %1: %2</source>
        <translation>Daneben, %1: %2</translation>
    </message>
    <message>
        <source>Bit error ratio of the run</source>
        <translation>Bitfehlerquote des Messlaufs</translation>
    </message>
    <message>
        <source>Bit error ratio of the run, at most</source>
        <translation>Bitfehlerquote des Messlaufs, höchstens</translation>
    </message>
    <message>
        <source>Bit errors</source>
        <translation>Bitfehler</translation>
    </message>
    <message>
        <source>Bit errors %1 · errored seconds %2 · severely errored %3 · sync losses %4</source>
        <translation>Bitfehler %1 · fehlerhafte Sekunden %2 · stark fehlerhafte %3 · Gleichlaufverluste %4</translation>
    </message>
    <message>
        <source>Bit errors divided by the bits that were compared.</source>
        <translation>Bitfehler geteilt durch die verglichenen Bits.</translation>
    </message>
    <message>
        <source>Bit errors in them</source>
        <translation>Bitfehler darin</translation>
    </message>
    <message>
        <source>Bit errors per second</source>
        <translation>Bitfehler je Sekunde</translation>
    </message>
    <message>
        <source>Bit errors seen</source>
        <translation>Gesehene Bitfehler</translation>
    </message>
    <message>
        <source>Bits pass: the line and the equipment in the serving office run in step.</source>
        <translation>Bits kommen durch: Leitung und Technik der Vermittlungsstelle sind im Gleichlauf.</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>Tafel</translation>
    </message>
    <message>
        <source>Board: %1</source>
        <translation>Tafel: %1</translation>
    </message>
    <message>
        <source>Boards</source>
        <translation>Tafeln</translation>
    </message>
    <message>
        <source>Boards kept under names; columns and sort</source>
        <translation>Gespeicherte Tafeln; Spalten und Sortierung</translation>
    </message>
    <message>
        <source>Bonds and grounds of the cable's shield along the way.</source>
        <translation>Verbindungen und Erdungen des Kabelschirms entlang der Strecke.</translation>
    </message>
    <message>
        <source>Both</source>
        <translation>Beide</translation>
    </message>
    <message>
        <source>Both are needed: the number and the code beside it.</source>
        <translation>Beides wird gebraucht: die Nummer und der Code daneben.</translation>
    </message>
    <message>
        <source>Both worked on this line: all of it counts (%1).</source>
        <translation>Beide haben an dieser Leitung gearbeitet: Alles zählt (%1).</translation>
    </message>
    <message>
        <source>Bound</source>
        <translation>Schranke</translation>
    </message>
    <message>
        <source>Bridged tap</source>
        <translation>Stichleitung</translation>
    </message>
    <message>
        <source>Bridged taps of a basic-rate loop in total</source>
        <translation>Stichleitungen einer Basisanschlussleitung zusammen</translation>
    </message>
    <message>
        <source>Bridged taps of a basic-rate loop in total, at most</source>
        <translation>Stichleitungen einer Basisanschlussleitung zusammen, höchstens</translation>
    </message>
    <message>
        <source>Bring back</source>
        <translation>Zurückbringen</translation>
    </message>
    <message>
        <source>Brought back by %1, which keeps the orders. %2.</source>
        <translation>Zurückgebracht von %1, wo die Aufträge bleiben. %2.</translation>
    </message>
    <message>
        <source>Brought back by %1. %2.</source>
        <translation>Zurückgebracht von %1. %2.</translation>
    </message>
    <message>
        <source>Bulk change</source>
        <translation>Sammeländerung</translation>
    </message>
    <message>
        <source>Bulk change…</source>
        <translation>Sammeländerung …</translation>
    </message>
    <message>
        <source>Bundle</source>
        <translation>Bündel</translation>
    </message>
    <message>
        <source>Bundles (*.json)</source>
        <translation>Bündel (*.json)</translation>
    </message>
    <message>
        <source>Bundles (*.json);;All files (*)</source>
        <translation>Bündel (*.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Bundles in the watched folder</source>
        <translation>Bündel im überwachten Ordner</translation>
    </message>
    <message>
        <source>Bundles that come into %1 are told here.</source>
        <translation>Bündel, die in %1 eintreffen, werden hier gemeldet.</translation>
    </message>
    <message>
        <source>Bundles that come into it are told below the page; nothing is taken in unasked.</source>
        <translation>Bündel, die dort eintreffen, werden unter der Seite gemeldet; ungefragt wird nichts übernommen.</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Wer</translation>
    </message>
    <message>
        <source>By these records nothing is open on this order.</source>
        <translation>Nach diesem Datenbestand ist an diesem Auftrag nichts offen.</translation>
    </message>
    <message>
        <source>By whom</source>
        <translation>Von wem</translation>
    </message>
    <message>
        <source>C&amp;olumns</source>
        <translation>&amp;Spalten</translation>
    </message>
    <message>
        <source>CO, central office</source>
        <translation>CO, Ortsvermittlungsstelle</translation>
    </message>
    <message>
        <source>CSV files (*.csv)</source>
        <translation>CSV-Dateien (*.csv)</translation>
    </message>
    <message>
        <source>CSV files (*.csv);;All files (*)</source>
        <translation>CSV-Dateien (*.csv);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>CSV in UTF-8 with a header; columns in any order. A header that is not ours can be read too: the import asks what its columns stand for.</source>
        <translation>CSV in UTF-8 mit Kopfzeile; Spalten in beliebiger Reihenfolge. Auch eine fremde Kopfzeile kann gelesen werden: das Einlesen fragt, wofür ihre Spalten stehen.</translation>
    </message>
    <message>
        <source>Ca&amp;ncel order…</source>
        <translation>S&amp;tornieren…</translation>
    </message>
    <message>
        <source>Cable</source>
        <translation>Kabel</translation>
    </message>
    <message>
        <source>Cable %1 (%2 in trouble)</source>
        <translation>Kabel %1 (%2 gestört)</translation>
    </message>
    <message>
        <source>Calibrated</source>
        <translation>Kalibriert</translation>
    </message>
    <message>
        <source>Calibrated on</source>
        <translation>Kalibriert am</translation>
    </message>
    <message>
        <source>Calibration</source>
        <translation>Kalibrierung</translation>
    </message>
    <message>
        <source>Calibration due</source>
        <translation>Kalibrierung fällig</translation>
    </message>
    <message>
        <source>Call</source>
        <translation>Anruf</translation>
    </message>
    <message>
        <source>Call %1, and name %2.</source>
        <translation>Rufen Sie %1 an und nennen Sie: %2.</translation>
    </message>
    <message>
        <source>Call awarded, delivered in established channel</source>
        <translation>Verbindung zugeteilt, im bestehenden Kanal übergeben</translation>
    </message>
    <message>
        <source>Call identity in use</source>
        <translation>Kennung der Verbindung schon benutzt</translation>
    </message>
    <message>
        <source>Call rejected</source>
        <translation>Verbindung abgewiesen</translation>
    </message>
    <message>
        <source>Call rejected due to feature at destination</source>
        <translation>Verbindung durch Leistungsmerkmal am Ziel abgewiesen</translation>
    </message>
    <message>
        <source>Call the issuer of this certificate, and name %1.</source>
        <translation>Rufen Sie den Aussteller dieses Zertifikats an und nennen Sie: %1.</translation>
    </message>
    <message>
        <source>Call the switch centre: it is not your wiring</source>
        <translation>Den Vermittlungsbetrieb anrufen: an der Verkabelung liegt es nicht</translation>
    </message>
    <message>
        <source>Call whoever supplies your line, and name %1.</source>
        <translation>Rufen Sie an, wer Ihnen den Anschluss liefert, und nennen Sie: %1.</translation>
    </message>
    <message>
        <source>Call with that identity already cleared</source>
        <translation>Verbindung mit dieser Kennung schon ausgelöst</translation>
    </message>
    <message>
        <source>Calls</source>
        <translation>Verbindungen</translation>
    </message>
    <message>
        <source>Calls were made and received for every service that was ordered.</source>
        <translation>Für jeden bestellten Dienst wurden Anrufe gemacht und angenommen.</translation>
    </message>
    <message>
        <source>Calls: %1 failed</source>
        <translation>Verbindungen: %1 fehlgeschlagen</translation>
    </message>
    <message>
        <source>Calls: %1 through</source>
        <translation>Verbindungen: %1 zustande gekommen</translation>
    </message>
    <message>
        <source>Calls: %1 through, %2 failed</source>
        <translation>Verbindungen: %1 zustande gekommen, %2 fehlgeschlagen</translation>
    </message>
    <message>
        <source>Cancel   Esc</source>
        <translation>Abbrechen   Esc</translation>
    </message>
    <message>
        <source>Cancel the order</source>
        <translation>Auftrag stornieren</translation>
    </message>
    <message>
        <source>Cancel the orders</source>
        <translation>Aufträge stornieren</translation>
    </message>
    <message>
        <source>Cancelled</source>
        <translation>Storniert</translation>
    </message>
    <message>
        <source>Cannot be</source>
        <translation>Nicht möglich</translation>
    </message>
    <message>
        <source>Carrier serving area</source>
        <translation>Carrier-Versorgungsbereich</translation>
    </message>
    <message>
        <source>Cause</source>
        <translation>Ursache</translation>
    </message>
    <message>
        <source>Cause %1, %2 (%3). Check first: %4.</source>
        <translation>Ursache %1, %2 (%3). Zuerst: %4.</translation>
    </message>
    <message>
        <source>Cause %1: %2</source>
        <translation>Ursache %1: %2</translation>
    </message>
    <message>
        <source>Cause came</source>
        <translation>Ursache kam</translation>
    </message>
    <message>
        <source>Cause value</source>
        <translation>Ursachenwert</translation>
    </message>
    <message>
        <source>Certificate</source>
        <translation>Zertifikat</translation>
    </message>
    <message>
        <source>Certificate %1</source>
        <translation>Zertifikat %1</translation>
    </message>
    <message>
        <source>Certificate %1 is in the records, but the paper could not be written: %2 Issue it again when there is a place for it; it will be the same.</source>
        <translation>Zertifikat %1 ist im Datenbestand, aber das Papier ließ sich nicht schreiben: %2 Bitte erneut ausstellen, wenn Platz dafür ist; es wird dasselbe sein.</translation>
    </message>
    <message>
        <source>Certificate %1 stands no longer: %2</source>
        <translation>Zertifikat %1 gilt nicht mehr: %2</translation>
    </message>
    <message>
        <source>Certificate %1 was issued again, signed: issue %2.</source>
        <translation>Zertifikat %1 wurde unterschrieben neu ausgestellt: Ausfertigung %2.</translation>
    </message>
    <message>
        <source>Certificate %1 was issued for the order after it.</source>
        <translation>Danach wurde für den Auftrag das Zertifikat %1 ausgestellt.</translation>
    </message>
    <message>
        <source>Certificate %1 was issued.</source>
        <translation>Zertifikat %1 wurde ausgestellt.</translation>
    </message>
    <message>
        <source>Certificate %1, code %2, issued %3%4; %5</source>
        <translation>Zertifikat %1, Code %2, ausgestellt %3%4; %5</translation>
    </message>
    <message>
        <source>Certificate %1, code %2.</source>
        <translation>Zertifikat %1, Code %2.</translation>
    </message>
    <message>
        <source>Certificate %1.</source>
        <translation>Zertifikat %1.</translation>
    </message>
    <message>
        <source>Certificate number %1 was given out twice: for order %2 (%3), which has it here, and for order %4 (%5), whose certificate is not taken in. The records of the station are in use twice: have one of them restored from a backup, which gives it a new tag, add it again, and issue a certificate for order %4 anew.</source>
        <translation>Die Zertifikatsnummer %1 wurde zweimal vergeben: für Auftrag %2 (%3), der das Zertifikat hier hat, und für Auftrag %4 (%5), dessen Zertifikat nicht übernommen wird. Die Aufzeichnungen der Station werden doppelt benutzt: Lassen Sie eine davon aus einer Sicherung wiederherstellen, was ihr ein neues Kürzel gibt, nehmen Sie sie neu auf, und stellen Sie für Auftrag %4 ein neues Zertifikat aus.</translation>
    </message>
    <message>
        <source>Certificates</source>
        <translation>Zertifikate</translation>
    </message>
    <message>
        <source>Certificates %1.</source>
        <translation>Zertifikate %1.</translation>
    </message>
    <message>
        <source>Certificates (*.pdf);;Text of a square (*.txt);;All files (*)</source>
        <translation>Zertifikate (*.pdf);;Text eines QR-Codes (*.txt);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Certificates of</source>
        <translation>Zertifikate für</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>Change order %1</source>
        <translation>Auftrag %1 ändern</translation>
    </message>
    <message>
        <source>Change that order</source>
        <translation>Vorhandenen Auftrag ändern</translation>
    </message>
    <message>
        <source>Change the order   Ctrl+S</source>
        <translation>Auftrag ändern   Strg+S</translation>
    </message>
    <message>
        <source>Change the order…</source>
        <translation>Auftrag ändern …</translation>
    </message>
    <message>
        <source>Change them</source>
        <translation>Ändern</translation>
    </message>
    <message>
        <source>Changed</source>
        <translation>Geändert</translation>
    </message>
    <message>
        <source>Changed: %1</source>
        <translation>Geändert: %1</translation>
    </message>
    <message>
        <source>Changed: %1 to %2</source>
        <translation>Geändert: %1 in %2</translation>
    </message>
    <message>
        <source>Changes</source>
        <translation>Änderungen</translation>
    </message>
    <message>
        <source>Changes of orders</source>
        <translation>Änderungen von Aufträgen</translation>
    </message>
    <message>
        <source>Changes, notes, self-test</source>
        <translation>Änderungen, Notizen, Selbsttest</translation>
    </message>
    <message>
        <source>Channel</source>
        <translation>Kanal</translation>
    </message>
    <message>
        <source>Channel B1</source>
        <translation>Kanal B1</translation>
    </message>
    <message>
        <source>Channel B2</source>
        <translation>Kanal B2</translation>
    </message>
    <message>
        <source>Channel D</source>
        <translation>Kanal D</translation>
    </message>
    <message>
        <source>Channel type not implemented</source>
        <translation>Kanaltyp nicht implementiert</translation>
    </message>
    <message>
        <source>Channel unacceptable</source>
        <translation>Kanal nicht annehmbar</translation>
    </message>
    <message>
        <source>Character %1 is %2: %3</source>
        <translation>Stelle %1 ist %2: %3</translation>
    </message>
    <message>
        <source>Characters that no font here has stand as their numbers; the Debian package %1 has them.</source>
        <translation>Zeichen, die hier keine Schrift hat, stehen als ihre Nummern; das Debian-Paket %1 hat sie.</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>Prüfen</translation>
    </message>
    <message>
        <source>Check SPIDs, look up causes</source>
        <translation>SPIDs prüfen, Ursachen nachschlagen</translation>
    </message>
    <message>
        <source>Check a certificate</source>
        <translation>Zertifikat prüfen</translation>
    </message>
    <message>
        <source>Check a list</source>
        <translation>Liste prüfen</translation>
    </message>
    <message>
        <source>Check first</source>
        <translation>Zuerst prüfen</translation>
    </message>
    <message>
        <source>Check first: %1</source>
        <translation>Zuerst prüfen: %1</translation>
    </message>
    <message>
        <source>Check first: %1.</source>
        <translation>Zuerst prüfen: %1.</translation>
    </message>
    <message>
        <source>Check identifiers</source>
        <translation>Kennungen prüfen</translation>
    </message>
    <message>
        <source>Check in and out, and tell somebody where you are. Do not climb or enter alone.</source>
        <translation>Ab- und zurückmelden und jemandem sagen, wo man ist. Nicht allein steigen oder einsteigen.</translation>
    </message>
    <message>
        <source>Check package and feature; call the switch centre</source>
        <translation>Paket und Leistungsmerkmal prüfen; den Vermittlungsbetrieb anrufen</translation>
    </message>
    <message>
        <source>Check protocol variant and bearer</source>
        <translation>Protokollvariante und Übermittlungsdienst prüfen</translation>
    </message>
    <message>
        <source>Check that the leads of the meter do not touch, and that the far end is short-circuited, and read again.</source>
        <translation>Prüfen, dass sich die Messleitungen nicht berühren und das ferne Ende kurzgeschlossen ist, und erneut ablesen.</translation>
    </message>
    <message>
        <source>Check that the meter reads alternating voltage alone; if it stays, treat it as a foreign voltage.</source>
        <translation>Prüfen, dass das Messgerät nur Wechselspannung anzeigt; bleibt es dabei, als Fremdspannung behandeln.</translation>
    </message>
    <message>
        <source>Check the carrier code</source>
        <translation>Die Kennzahl des Netzbetreibers prüfen</translation>
    </message>
    <message>
        <source>Check the channel number; point-to-point and multipoint mixed up?</source>
        <translation>Die Kanalnummer prüfen; Punkt-zu-Punkt und Mehrpunkt verwechselt?</translation>
    </message>
    <message>
        <source>Check the choice of B or D channel in the terminal</source>
        <translation>Im Endgerät die Wahl von B- oder D-Kanal prüfen</translation>
    </message>
    <message>
        <source>Check the choice of long-distance carrier on the line</source>
        <translation>Die Auswahl des Fernnetzbetreibers am Anschluss prüfen</translation>
    </message>
    <message>
        <source>Check the closed-group index</source>
        <translation>Den Index der geschlossenen Gruppe prüfen</translation>
    </message>
    <message>
        <source>Check the closed-group or class settings</source>
        <translation>Die Einstellungen der geschlossenen Gruppe oder der Klasse prüfen</translation>
    </message>
    <message>
        <source>Check the closed-group settings</source>
        <translation>Die Einstellungen der geschlossenen Gruppe prüfen</translation>
    </message>
    <message>
        <source>Check the count of digits and the type of number</source>
        <translation>Anzahl der Ziffern und Rufnummerntyp prüfen</translation>
    </message>
    <message>
        <source>Check the digits dialled, and whether the number is built in the switch yet</source>
        <translation>Die gewählten Ziffern prüfen, und ob die Rufnummer in der Vermittlung schon eingerichtet ist</translation>
    </message>
    <message>
        <source>Check the identity of the parked call</source>
        <translation>Die Kennung der geparkten Verbindung prüfen</translation>
    </message>
    <message>
        <source>Check the level that is sent and the impedance that the set is set to, and read again.</source>
        <translation>Sendepegel und eingestellte Impedanz des Geräts prüfen und erneut ablesen.</translation>
    </message>
    <message>
        <source>Check the number, its prefix and the choice of carrier</source>
        <translation>Rufnummer, Präfix und Auswahl des Netzbetreibers prüfen</translation>
    </message>
    <message>
        <source>Check the packet parameters</source>
        <translation>Die Paketparameter prüfen</translation>
    </message>
    <message>
        <source>Check the protocol variant in the terminal</source>
        <translation>Die Protokollvariante im Endgerät prüfen</translation>
    </message>
    <message>
        <source>Check the protocol variant; report with a trace</source>
        <translation>Die Protokollvariante prüfen; mit einer Aufzeichnung melden</translation>
    </message>
    <message>
        <source>Check the protocol variant; restart the terminal</source>
        <translation>Die Protokollvariante prüfen; das Endgerät neu starten</translation>
    </message>
    <message>
        <source>Check the protocol variant; the switch may not know the feature</source>
        <translation>Die Protokollvariante prüfen; die Vermittlung kennt das Leistungsmerkmal vielleicht nicht</translation>
    </message>
    <message>
        <source>Check the state of the packet or frame link</source>
        <translation>Den Zustand der Paket- oder Frame-Verbindung prüfen</translation>
    </message>
    <message>
        <source>Check, first things first</source>
        <translation>Zu prüfen, Wichtigstes zuerst</translation>
    </message>
    <message>
        <source>Choose a file…</source>
        <translation>Datei wählen…</translation>
    </message>
    <message>
        <source>Choose a side.</source>
        <translation>Wählen Sie eine Seite.</translation>
    </message>
    <message>
        <source>Choose one on the board, or type its number there.</source>
        <translation>Auf der Tafel einen wählen oder dort seine Nummer eingeben.</translation>
    </message>
    <message>
        <source>Choose what it was.</source>
        <translation>Wählen, was es war.</translation>
    </message>
    <message>
        <source>Choose: %1</source>
        <translation>Wählen: %1</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>Wählen…</translation>
    </message>
    <message>
        <source>Circuit</source>
        <translation>Anschluss</translation>
    </message>
    <message>
        <source>Circuit %1</source>
        <translation>Anschluss %1</translation>
    </message>
    <message>
        <source>Circuit %1 is not in service: no order of it was completed, or the last one disconnected it.</source>
        <translation>Anschluss %1 ist nicht in Betrieb: kein Auftrag dazu wurde abgeschlossen, oder der letzte hat ihn gekündigt.</translation>
    </message>
    <message>
        <source>Circuit %1 is of another kind of line or office.</source>
        <translation>Anschluss %1 hat eine andere Leitungsart oder Vermittlungsstelle.</translation>
    </message>
    <message>
        <source>Circuit %1: %2 is held by circuit %3 now.</source>
        <translation>Anschluss %1: %2 ist jetzt vom Anschluss %3 belegt.</translation>
    </message>
    <message>
        <source>Circuit %1: %2 since then (order %3).</source>
        <translation>Anschluss %1: seither %2 (Auftrag %3).</translation>
    </message>
    <message>
        <source>Circuit %1: order %2 was taken in since then, with %3.</source>
        <translation>Anschluss %1: seither wurde Auftrag %2 aufgenommen, mit %3.</translation>
    </message>
    <message>
        <source>Circuit and pair</source>
        <translation>Anschluss und Doppelader</translation>
    </message>
    <message>
        <source>Circuit loss at %1</source>
        <translation>Dämpfung des Anschlusses bei %1</translation>
    </message>
    <message>
        <source>Circuit loss at 1004 Hz, good up to</source>
        <translation>Dämpfung bei 1004 Hz, gut bis</translation>
    </message>
    <message>
        <source>Circuit loss at 1004 Hz, marginal up to</source>
        <translation>Dämpfung bei 1004 Hz, grenzwertig bis</translation>
    </message>
    <message>
        <source>Circuit noise</source>
        <translation>Geräusch</translation>
    </message>
    <message>
        <source>Circuit noise, good below</source>
        <translation>Leitungsgeräusch, gut unter</translation>
    </message>
    <message>
        <source>Circuit noise, marginal up to</source>
        <translation>Leitungsgeräusch, grenzwertig bis</translation>
    </message>
    <message>
        <source>Circuit number</source>
        <translation>Anschlussnummer</translation>
    </message>
    <message>
        <source>Circuit, or any part of a number or name</source>
        <translation>Anschluss oder Teil einer Nummer oder eines Namens</translation>
    </message>
    <message>
        <source>Circuits</source>
        <translation>Anschlüsse</translation>
    </message>
    <message>
        <source>Circuits found</source>
        <translation>Gefundene Anschlüsse</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Klasse</translation>
    </message>
    <message>
        <source>Clear all</source>
        <translation>Alle aufheben</translation>
    </message>
    <message>
        <source>Clear search and filters   Esc</source>
        <translation>Suche und Filter aufheben   Esc</translation>
    </message>
    <message>
        <source>Clear the trouble and record the %1 again.</source>
        <translation>Störung beheben und erneut erfassen: %1.</translation>
    </message>
    <message>
        <source>Cleared</source>
        <translation>Entstört</translation>
    </message>
    <message>
        <source>Cleared trouble</source>
        <translation>Behobene Störung</translation>
    </message>
    <message>
        <source>Cleared: %1</source>
        <translation>Behoben: %1</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Close   Esc</source>
        <translation>Schließen   Esc</translation>
    </message>
    <message>
        <source>Close the trouble</source>
        <translation>Störung abschließen</translation>
    </message>
    <message>
        <source>Close-out</source>
        <translation>Abschluss</translation>
    </message>
    <message>
        <source>Close-out, order %1</source>
        <translation>Abschluss, Auftrag %1</translation>
    </message>
    <message>
        <source>Closed hazard</source>
        <translation>Behobene Gefahr</translation>
    </message>
    <message>
        <source>Closed: %1, by word of %2, %3; clear card of %4.</source>
        <translation>Behoben: %1, nach Auskunft von %2, %3; freie Karte vom %4.</translation>
    </message>
    <message>
        <source>Closed: %1, by word of %2, reference %3, %4; clear card of %5.</source>
        <translation>Behoben: %1, nach Auskunft von %2, Zeichen %3, %4; freie Karte vom %5.</translation>
    </message>
    <message>
        <source>Closed: %1; clear card of %2.</source>
        <translation>Behoben: %1; freie Karte vom %2.</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Code</translation>
    </message>
    <message>
        <source>Coil</source>
        <translation>Pupinspule</translation>
    </message>
    <message>
        <source>Coils</source>
        <translation>Spulen</translation>
    </message>
    <message>
        <source>Column</source>
        <translation>Spalte</translation>
    </message>
    <message>
        <source>Columns of a file: %1</source>
        <translation>Spalten einer Datei: %1</translation>
    </message>
    <message>
        <source>Columns of an order file, a sample…</source>
        <translation>Spalten einer Auftragsdatei, ein Muster…</translation>
    </message>
    <message>
        <source>Columns of the file</source>
        <translation>Spalten der Datei</translation>
    </message>
    <message>
        <source>Columns…</source>
        <translation>Spalten …</translation>
    </message>
    <message>
        <source>Compare the B channel asked for with what is provisioned</source>
        <translation>Den verlangten B-Kanal mit dem eingerichteten vergleichen</translation>
    </message>
    <message>
        <source>Compare them with what the office assigned, digit by digit; take the repair that is offered, or have the order changed.</source>
        <translation>Ziffer für Ziffer mit den Zuweisungen der Vermittlungsstelle vergleichen; die angebotene Korrektur übernehmen oder den Auftrag ändern lassen.</translation>
    </message>
    <message>
        <source>Compare variant, numbers and SPIDs of the order with what the office assigned.</source>
        <translation>Variante, Rufnummern und SPIDs des Auftrags mit den Zuweisungen des Büros vergleichen.</translation>
    </message>
    <message>
        <source>Complete the order</source>
        <translation>Auftrag abschließen</translation>
    </message>
    <message>
        <source>Complete the safety card before the first measurement.</source>
        <translation>Die Sicherheitskarte vor der ersten Messung vervollständigen.</translation>
    </message>
    <message>
        <source>Completed with the line's area code to %1</source>
        <translation>Mit der Vorwahl des Anschlusses ergänzt zu %1</translation>
    </message>
    <message>
        <source>Completion number</source>
        <translation>Fertigmeldenummer</translation>
    </message>
    <message>
        <source>Completion number, to read back to the desk</source>
        <translation>Abschlussnummer, der Dienststelle vorzulesen</translation>
    </message>
    <message>
        <source>Confidence of the stated upper bound</source>
        <translation>Sicherheit der angegebenen oberen Schranke</translation>
    </message>
    <message>
        <source>Contact</source>
        <translation>Kontakt</translation>
    </message>
    <message>
        <source>Contact on site</source>
        <translation>Ansprechperson vor Ort</translation>
    </message>
    <message>
        <source>Contact: %1</source>
        <translation>Kontakt: %1</translation>
    </message>
    <message>
        <source>Copied: %1 settings.</source>
        <translation>Kopierte Einstellungen: %1.</translation>
    </message>
    <message>
        <source>Copies of certificates</source>
        <translation>Zertifikatskopien</translation>
    </message>
    <message>
        <source>Copy %1, issued on %2</source>
        <translation>Abschrift %1, ausgestellt am %2</translation>
    </message>
    <message>
        <source>Copy all (F6)</source>
        <translation>Alles kopieren (F6)</translation>
    </message>
    <message>
        <source>Copy the list</source>
        <translation>Liste kopieren</translation>
    </message>
    <message>
        <source>Copy the ro&amp;ws   Ctrl+C</source>
        <translation>&amp;Zeilen kopieren   Strg+C</translation>
    </message>
    <message>
        <source>Copy the rows</source>
        <translation>Zeilen kopieren</translation>
    </message>
    <message>
        <source>Correct (C)</source>
        <translation>Korrigieren (C)</translation>
    </message>
    <message>
        <source>Correct the identifiers of the order with the provider.</source>
        <translation>Die Kennungen des Auftrags mit dem Anbieter berichtigen.</translation>
    </message>
    <message>
        <source>Correct the protocol variant of the order.</source>
        <translation>Die Protokollvariante des Auftrags berichtigen.</translation>
    </message>
    <message>
        <source>Count the quiet seconds</source>
        <translation>Ruhige Sekunden zählen</translation>
    </message>
    <message>
        <source>Counted by</source>
        <translation>Gezählt nach</translation>
    </message>
    <message>
        <source>Cover, %1</source>
        <translation>Deckblatt, %1</translation>
    </message>
    <message>
        <source>Crew</source>
        <translation>Mannschaft</translation>
    </message>
    <message>
        <source>Crew and vehicle</source>
        <translation>Trupp und Fahrzeug</translation>
    </message>
    <message>
        <source>Crew: %1</source>
        <translation>Trupp: %1</translation>
    </message>
    <message>
        <source>Criteria</source>
        <translation>Kriterien</translation>
    </message>
    <message>
        <source>Criterion</source>
        <translation>Kriterium</translation>
    </message>
    <message>
        <source>Ctrl+Enter from any field of this part</source>
        <translation>Strg+Eingabe aus jedem Feld dieses Teils</translation>
    </message>
    <message>
        <source>Customer</source>
        <translation>Kunde</translation>
    </message>
    <message>
        <source>Customer and premises</source>
        <translation>Kunde und Adresse</translation>
    </message>
    <message>
        <source>Customer: %1, signed after the first issue, on %2</source>
        <translation>Kunde: %1, nach der ersten Ausgabe unterschrieben, am %2</translation>
    </message>
    <message>
        <source>Customer: not signed when this was issued. Name, date, signature</source>
        <translation>Kunde: bei der Ausstellung nicht unterschrieben. Name, Tag, Unterschrift</translation>
    </message>
    <message>
        <source>D channel</source>
        <translation>D-Kanal</translation>
    </message>
    <message>
        <source>DC</source>
        <translation>DC</translation>
    </message>
    <message>
        <source>DC resistance</source>
        <translation>Gleichstromwiderstand</translation>
    </message>
    <message>
        <source>DC resistance of a basic-rate loop</source>
        <translation>Gleichstromwiderstand einer Basisanschlussleitung</translation>
    </message>
    <message>
        <source>DC resistance of a basic-rate loop, at most</source>
        <translation>Gleichstromwiderstand einer Basisanschlussleitung, höchstens</translation>
    </message>
    <message>
        <source>DC voltage</source>
        <translation>Gleichspannung</translation>
    </message>
    <message>
        <source>DC voltage, %1</source>
        <translation>Gleichspannung, %1</translation>
    </message>
    <message>
        <source>DN</source>
        <translation>DN</translation>
    </message>
    <message>
        <source>DN %1</source>
        <translation>DN %1</translation>
    </message>
    <message>
        <source>DN twice</source>
        <translation>Rufnummer doppelt</translation>
    </message>
    <message>
        <source>Dangerous voltage</source>
        <translation>Gefährliche Spannung</translation>
    </message>
    <message>
        <source>Dangerous voltage, closed</source>
        <translation>Gefährliche Spannung, behoben</translation>
    </message>
    <message>
        <source>Dangerous voltages that were read, and how each was closed</source>
        <translation>Gefährliche Spannungen, die gemessen wurden, und wie jede behoben wurde</translation>
    </message>
    <message>
        <source>Data rate</source>
        <translation>Datenrate</translation>
    </message>
    <message>
        <source>Data that was sent over the line arrived with more errors than are allowed.</source>
        <translation>Über die Leitung gesendete Daten kamen mit mehr Fehlern an als erlaubt.</translation>
    </message>
    <message>
        <source>Data was sent over the line without a break and compared bit by bit.</source>
        <translation>Daten wurden ohne Unterbrechung über die Leitung gesendet und Bit für Bit verglichen.</translation>
    </message>
    <message>
        <source>Database</source>
        <translation>Datenbank</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Date and time</source>
        <translation>Tag und Uhrzeit</translation>
    </message>
    <message>
        <source>Date missed</source>
        <translation>Termin verpasst</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Day lists</source>
        <translation>Tageslisten</translation>
    </message>
    <message>
        <source>Day list…</source>
        <translation>Tagesliste…</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>Days, mean</source>
        <translation>Tage, im Mittel</translation>
    </message>
    <message>
        <source>Days, oldest</source>
        <translation>Tage, höchstens</translation>
    </message>
    <message>
        <source>Decide, and keep the decision</source>
        <translation>Entscheiden und festhalten</translation>
    </message>
    <message>
        <source>Decided again, %1 ends otherwise than it was stored: look at the history of the records.</source>
        <translation>Erneut entschieden, endet %1 anders als gespeichert: bitte den Verlauf des Datenbestands ansehen.</translation>
    </message>
    <message>
        <source>Decides criterion by criterion from what was recorded, and from nothing else: nobody types that a line passed.</source>
        <translation>Entscheidet Kriterium für Kriterium aus dem, was erfasst wurde, und aus nichts anderem: niemand tippt ein, dass ein Anschluss bestanden hat.</translation>
    </message>
    <message>
        <source>Delivered</source>
        <translation>Geliefert</translation>
    </message>
    <message>
        <source>Departure of a load coil from its spacing</source>
        <translation>Abweichung einer Pupinspule von ihrem Abstand</translation>
    </message>
    <message>
        <source>Departure of a load coil from its spacing, at most this share of it</source>
        <translation>Abweichung einer Pupinspule von ihrem Abstand, höchstens dieser Anteil davon</translation>
    </message>
    <message>
        <source>Des&amp;k work…</source>
        <translation>&amp;Büroarbeit…</translation>
    </message>
    <message>
        <source>Desk</source>
        <translation>Büro</translation>
    </message>
    <message>
        <source>Desk entry</source>
        <translation>Büroeintrag</translation>
    </message>
    <message>
        <source>Desk work</source>
        <translation>Büroarbeit</translation>
    </message>
    <message>
        <source>Desk: %1</source>
        <translation>Büro: %1</translation>
    </message>
    <message>
        <source>Destination out of order</source>
        <translation>Ziel gestört</translation>
    </message>
    <message>
        <source>Detector check</source>
        <translation>Erkennungsprüfung</translation>
    </message>
    <message>
        <source>Detector check on %1</source>
        <translation>Erkennungsprüfung auf %1</translation>
    </message>
    <message>
        <source>Detector check on %1: %2 s quiet with %3, %4 sent, %5 seen, %6</source>
        <translation>Erkennungsprüfung auf %1: %2 s ruhig mit %3, %4 eingefügt, %5 gesehen, %6</translation>
    </message>
    <message>
        <source>Dial prefix</source>
        <translation>Vorwahlziffer</translation>
    </message>
    <message>
        <source>Dial tone</source>
        <translation>Wählton</translation>
    </message>
    <message>
        <source>Dial tone is heard when the receiver is lifted.</source>
        <translation>Beim Abheben ist der Wählton zu hören.</translation>
    </message>
    <message>
        <source>Digest of its record</source>
        <translation>Hashwert seines Datensatzes</translation>
    </message>
    <message>
        <source>Direct voltage that is foreign battery on a pair without office battery, from</source>
        <translation>Gleichspannung, die auf einer Doppelader ohne Amtsbatterie fremde Batterie ist, ab</translation>
    </message>
    <message>
        <source>Direct voltage that stops the work, above</source>
        <translation>Gleichspannung, die die Arbeit anhält, über</translation>
    </message>
    <message>
        <source>Directory number</source>
        <translation>Rufnummer</translation>
    </message>
    <message>
        <source>Discard the draft</source>
        <translation>Entwurf verwerfen</translation>
    </message>
    <message>
        <source>Disconnect</source>
        <translation>Abschaltung</translation>
    </message>
    <message>
        <source>Disk quota exceeded</source>
        <translation>Der zugeteilte Platz ist verbraucht</translation>
    </message>
    <message>
        <source>Dismiss</source>
        <translation>Ausblenden</translation>
    </message>
    <message>
        <source>Do it once more to change it all the same.</source>
        <translation>Tun Sie es noch einmal, um ihn trotzdem zu ändern.</translation>
    </message>
    <message>
        <source>Do no work on outside plant, protectors or inside wiring while a thunderstorm is near.</source>
        <translation>Bei nahem Gewitter nicht am Leitungsnetz, an Ableitern oder an der Hausverkabelung arbeiten.</translation>
    </message>
    <message>
        <source>Does not count (Del)</source>
        <translation>Zählt nicht (Entf)</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Done already</source>
        <translation>Schon erledigt</translation>
    </message>
    <message>
        <source>Done so far</source>
        <translation>Bisher getan</translation>
    </message>
    <message>
        <source>Drawing of the pair</source>
        <translation>Zeichnung der Doppelader</translation>
    </message>
    <message>
        <source>Drawn</source>
        <translation>Balken</translation>
    </message>
    <message>
        <source>Drawn without the row that is not complete yet.</source>
        <translation>Gezeichnet ohne die noch unvollständige Zeile.</translation>
    </message>
    <message>
        <source>Drop a CSV file here, or choose one</source>
        <translation>CSV-Datei hierher ziehen oder wählen</translation>
    </message>
    <message>
        <source>Drop or add the leading 0 or 1</source>
        <translation>Die führende 0 oder 1 weglassen oder hinzufügen</translation>
    </message>
    <message>
        <source>Drop the file of a certificate here, or a text with what its square says.</source>
        <translation>Datei eines Zertifikats hierher ziehen oder einen Text mit dem Inhalt seines QR-Codes.</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Fällig</translation>
    </message>
    <message>
        <source>Due %1: goes along.</source>
        <translation>Fällig %1: geht mit.</translation>
    </message>
    <message>
        <source>Due date</source>
        <translation>Fällig am</translation>
    </message>
    <message>
        <source>E: one error · 1–9: so many · Backspace: take it back · S: sync lost, back · X: stop early</source>
        <translation>E: ein Fehler · 1–9: so viele · Rücktaste: zurücknehmen · S: Gleichlauf weg, wieder da · X: vorzeitig beenden</translation>
    </message>
    <message>
        <source>ES</source>
        <translation>ES</translation>
    </message>
    <message>
        <source>ESR, SESR</source>
        <translation>ESR, SESR</translation>
    </message>
    <message>
        <source>ETSI DSS1, point-to-multipoint</source>
        <translation>ETSI DSS1, Mehrgeräteanschluss</translation>
    </message>
    <message>
        <source>ETSI DSS1, point-to-point</source>
        <translation>ETSI DSS1, Anlagenanschluss</translation>
    </message>
    <message>
        <source>Each certificate stands for itself and is checked by its own number and code.</source>
        <translation>Jedes Zertifikat gilt für sich und wird mit seiner eigenen Nummer und seinem Code geprüft.</translation>
    </message>
    <message>
        <source>Each exception of the orders that are accepted with one, by the day of acceptance.</source>
        <translation>Jede Ausnahme der Aufträge, die mit einer abgenommen sind, nach dem Tag der Abnahme.</translation>
    </message>
    <message>
        <source>Each of the %1 points that this line was checked for is met</source>
        <translation>Jeder der %1 Punkte, auf die dieser Anschluss geprüft wurde, ist erfüllt</translation>
    </message>
    <message>
        <source>Each row gets its verdict here: error, warning or in order, with the reason and, where only one is possible, the repair.</source>
        <translation>Jede Zeile bekommt hier ihr Ergebnis: Fehler, Warnung oder in Ordnung, mit dem Grund und, wo nur eine möglich ist, der Korrektur.</translation>
    </message>
    <message>
        <source>Each terminal was given an address of its own on the line.</source>
        <translation>Jedes Endgerät hat eine eigene Adresse am Anschluss erhalten.</translation>
    </message>
    <message>
        <source>Element %1</source>
        <translation>Element %1</translation>
    </message>
    <message>
        <source>Emergency calls (911) are answered for the service address as it was ordered: %1. Tell the issuer if that is wrong, or if you move.</source>
        <translation>Notrufe (911) werden für die bestellte Anschrift des Anschlusses entgegengenommen: %1. Sagen Sie es dem Aussteller, wenn sie falsch ist oder Sie umziehen.</translation>
    </message>
    <message>
        <source>Emergency calls are answered for the service address as it was ordered: %1. Tell the issuer if that is wrong, or if you move.</source>
        <translation>Notrufe werden für die bestellte Anschrift des Anschlusses entgegengenommen: %1. Sagen Sie es dem Aussteller, wenn sie falsch ist oder Sie umziehen.</translation>
    </message>
    <message>
        <source>End of card</source>
        <translation>Ende der Karte</translation>
    </message>
    <message>
        <source>End of certificate</source>
        <translation>Ende des Zertifikats</translation>
    </message>
    <message>
        <source>End of cover</source>
        <translation>Ende des Deckblatts</translation>
    </message>
    <message>
        <source>End of handoff</source>
        <translation>Ende der Übergabe</translation>
    </message>
    <message>
        <source>End of list</source>
        <translation>Ende der Liste</translation>
    </message>
    <message>
        <source>End of report</source>
        <translation>Ende der Auswertung</translation>
    </message>
    <message>
        <source>End of slip</source>
        <translation>Ende des Zettels</translation>
    </message>
    <message>
        <source>Ended at</source>
        <translation>Ende</translation>
    </message>
    <message>
        <source>Ends the visit: how it went, and when.</source>
        <translation>Beendet den Einsatz: wie er verlief, und wann.</translation>
    </message>
    <message>
        <source>Enough current reaches a telephone for it to work.</source>
        <translation>Ein Telefon erhält genug Strom, um zu arbeiten.</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Eingabe</translation>
    </message>
    <message>
        <source>Enter a run made without this clock</source>
        <translation>Messlauf ohne diese Uhr eintragen</translation>
    </message>
    <message>
        <source>Enter it from its label, have the office record its calibration, or measure again with another one.</source>
        <translation>Vom Etikett eintragen, die Kalibrierung im Büro erfassen lassen oder mit einem anderen noch einmal messen.</translation>
    </message>
    <message>
        <source>Enter shows the circuit with its whole life</source>
        <translation>Eingabe zeigt den Anschluss mit seinem ganzen Verlauf</translation>
    </message>
    <message>
        <source>Enter the make-up of the pair, or measure its resistance and loss.</source>
        <translation>Den Leitungsaufbau der Doppelader eingeben oder ihren Widerstand und ihre Dämpfung messen.</translation>
    </message>
    <message>
        <source>Enter the make-up of the pair, or measure its resistance.</source>
        <translation>Den Leitungsaufbau der Doppelader eingeben oder ihren Widerstand messen.</translation>
    </message>
    <message>
        <source>Error of the loss prediction</source>
        <translation>Fehler der Dämpfungsvorhersage</translation>
    </message>
    <message>
        <source>Error of the loss prediction, at least</source>
        <translation>Fehler der Dämpfungsvorhersage, mindestens</translation>
    </message>
    <message>
        <source>Error of the loss prediction, share of the loss</source>
        <translation>Fehler der Dämpfungsvorhersage, Anteil der Dämpfung</translation>
    </message>
    <message>
        <source>Error of the resistance prediction</source>
        <translation>Fehler der Widerstandsvorhersage</translation>
    </message>
    <message>
        <source>Error of the resistance prediction, at least</source>
        <translation>Fehler der Widerstandsvorhersage, mindestens</translation>
    </message>
    <message>
        <source>Error of the resistance prediction, share of the resistance</source>
        <translation>Fehler der Widerstandsvorhersage, Anteil des Widerstands</translation>
    </message>
    <message>
        <source>Error test</source>
        <translation>Fehlermessung</translation>
    </message>
    <message>
        <source>Error-rate run</source>
        <translation>Messlauf</translation>
    </message>
    <message>
        <source>Errored second</source>
        <translation>Fehlerhafte Sekunde</translation>
    </message>
    <message>
        <source>Errored second ratio</source>
        <translation>Anteil fehlerhafter Sekunden</translation>
    </message>
    <message>
        <source>Errored seconds</source>
        <translation>Fehlerhafte Sekunden</translation>
    </message>
    <message>
        <source>Errored seconds (ESR) or severely errored ones (SESR) divided by the seconds of available time; undefined where there are none.</source>
        <translation>Fehlerhafte (ESR) oder stark fehlerhafte Sekunden (SESR) geteilt durch die Sekunden der verfügbaren Zeit; unbestimmt, wo es keine gibt.</translation>
    </message>
    <message>
        <source>Errored seconds of the run</source>
        <translation>Fehlerhafte Sekunden des Messlaufs</translation>
    </message>
    <message>
        <source>Errored seconds of the run, at most this share of available seconds</source>
        <translation>Fehlerhafte Sekunden des Messlaufs, höchstens dieser Anteil der verfügbaren Sekunden</translation>
    </message>
    <message>
        <source>Errored seconds seen</source>
        <translation>Gesehene fehlerhafte Sekunden</translation>
    </message>
    <message>
        <source>Errors</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>Errors per second</source>
        <translation>Fehler je Sekunde</translation>
    </message>
    <message>
        <source>Errors sent %1 times, every one seen, counters cleared.</source>
        <translation>%1-mal Fehler eingefügt, jeder gesehen, Zähler zurückgesetzt.</translation>
    </message>
    <message>
        <source>Errors sent on purpose</source>
        <translation>Absichtlich gesendete Fehler</translation>
    </message>
    <message>
        <source>Errors sent: bits in all</source>
        <translation>Gesendete Fehler: Bits insgesamt</translation>
    </message>
    <message>
        <source>Errors sent: how often</source>
        <translation>Gesendete Fehler: wie oft</translation>
    </message>
    <message>
        <source>Errors that are made on purpose before a run, to show that the test set sees them; without it a clean run proves nothing.</source>
        <translation>Fehler, die vor einem Messlauf mit Absicht gemacht werden, um zu zeigen, dass das Messgerät sie sieht; ohne sie beweist ein fehlerfreier Messlauf nichts.</translation>
    </message>
    <message>
        <source>Errors were seen before any was sent on purpose: the line makes errors.</source>
        <translation>Es wurden Fehler gesehen, bevor einer absichtlich eingefügt wurde: die Leitung erzeugt Fehler.</translation>
    </message>
    <message>
        <source>Errors were sent %1 times and %2 bit errors in %3 errored seconds were seen, more than were sent: the line makes errors.</source>
        <translation>Es wurden %1-mal Fehler eingefügt und %2 Bitfehler in %3 fehlerhaften Sekunden gesehen, mehr als eingefügt: die Leitung erzeugt Fehler.</translation>
    </message>
    <message>
        <source>Errors were sent %1 times and %2 bit errors in %3 errored seconds were seen: not every one was seen.</source>
        <translation>Es wurden %1-mal Fehler eingefügt und %2 Bitfehler in %3 fehlerhaften Sekunden gesehen: nicht jeder wurde gesehen.</translation>
    </message>
    <message>
        <source>Errors were sent on purpose before the test, and the test set did not see each one.</source>
        <translation>Vor der Messung wurden absichtlich Fehler eingefügt, und das Prüfgerät hat nicht jeden gesehen.</translation>
    </message>
    <message>
        <source>Errors were sent on purpose before the test, and the test set saw each one.</source>
        <translation>Vor der Messung wurden absichtlich Fehler eingefügt, und das Prüfgerät hat jeden gesehen.</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>Event %1 does not follow the one before.</source>
        <translation>Ereignis %1 folgt nicht auf das vorige.</translation>
    </message>
    <message>
        <source>Event %1 is not what its digest says.</source>
        <translation>Ereignis %1 ist nicht das, was seine Prüfsumme sagt.</translation>
    </message>
    <message>
        <source>Events</source>
        <translation>Ereignisse</translation>
    </message>
    <message>
        <source>Every byte of the file is as it was signed.</source>
        <translation>Jedes Byte der Datei ist, wie es signiert wurde.</translation>
    </message>
    <message>
        <source>Every identifier fits the variant %1.</source>
        <translation>Jede Kennung passt zur Variante %1.</translation>
    </message>
    <message>
        <source>Every installer</source>
        <translation>Alle Monteure</translation>
    </message>
    <message>
        <source>Every office</source>
        <translation>Alle VSt</translation>
    </message>
    <message>
        <source>Every order, where it stands and why</source>
        <translation>Jeder Auftrag, wo er steht und warum</translation>
    </message>
    <message>
        <source>Every other limit is common practice of the trade.</source>
        <translation>Alle anderen Grenzwerte sind im Fach üblich.</translation>
    </message>
    <message>
        <source>Every pair is live until measured</source>
        <translation>Jede Doppelader steht unter Spannung, bis gemessen ist</translation>
    </message>
    <message>
        <source>Every rule is met</source>
        <translation>Alle Regeln sind erfüllt</translation>
    </message>
    <message>
        <source>Everything in %1 is in the records.</source>
        <translation>Alles aus %1 ist im Datenbestand.</translation>
    </message>
    <message>
        <source>Everything was taken in.</source>
        <translation>Alles wurde übernommen.</translation>
    </message>
    <message>
        <source>Everything was taken in. Read what is marked before anybody works on it.</source>
        <translation>Alles wurde übernommen. Lesen Sie, was markiert ist, bevor jemand daran arbeitet.</translation>
    </message>
    <message>
        <source>Everywhere</source>
        <translation>Überall</translation>
    </message>
    <message>
        <source>Evidence that it counts was voided: %1</source>
        <translation>Ein Nachweis, den es zählt, wurde für ungültig erklärt: %1</translation>
    </message>
    <message>
        <source>Excepted</source>
        <translation>Ausgenommen</translation>
    </message>
    <message>
        <source>Excepted by %1: %2</source>
        <translation>Ausnahme durch %1: %2</translation>
    </message>
    <message>
        <source>Exception</source>
        <translation>Ausnahme</translation>
    </message>
    <message>
        <source>Exception by a supervisor</source>
        <translation>Ausnahme durch die Aufsicht</translation>
    </message>
    <message>
        <source>Exception for %1 by %2: %3</source>
        <translation>Ausnahme für %1 durch %2: %3</translation>
    </message>
    <message>
        <source>Exceptions</source>
        <translation>Ausnahmen</translation>
    </message>
    <message>
        <source>Exchange routing error</source>
        <translation>Fehler der Leitweglenkung</translation>
    </message>
    <message>
        <source>Export the circuit…</source>
        <translation>Anschluss ausgeben…</translation>
    </message>
    <message>
        <source>Export what the board shows</source>
        <translation>Ausgeben, was die Tafel zeigt</translation>
    </message>
    <message>
        <source>Eye protection</source>
        <translation>Augenschutz</translation>
    </message>
    <message>
        <source>Facility rejected</source>
        <translation>Leistungsmerkmal abgewiesen</translation>
    </message>
    <message>
        <source>Failed too</source>
        <translation>Auch fehlgeschlagen</translation>
    </message>
    <message>
        <source>Failed: %1</source>
        <translation>Misslungen: %1</translation>
    </message>
    <message>
        <source>Failing criteria</source>
        <translation>Nicht erfüllte Kriterien</translation>
    </message>
    <message>
        <source>Far end</source>
        <translation>Gegenstelle</translation>
    </message>
    <message>
        <source>Feeder pair</source>
        <translation>Doppelader im Hauptkabel</translation>
    </message>
    <message>
        <source>Fewer letters find more.</source>
        <translation>Weniger Buchstaben finden mehr.</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Messgröße</translation>
    </message>
    <message>
        <source>Figures</source>
        <translation>Zahlen</translation>
    </message>
    <message>
        <source>Figures then and today</source>
        <translation>Werte damals und heute</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>Filled with the entry of %1. What you record takes its place; that one stays on record as corrected.</source>
        <translation>Ausgefüllt mit dem Eintrag von %1. Was Sie erfassen, tritt an seine Stelle; er bleibt als korrigiert erhalten.</translation>
    </message>
    <message>
        <source>Filled with what was recorded. What you record takes its place; that one stays on record as corrected.</source>
        <translation>Ausgefüllt mit dem Erfassten. Was Sie erfassen, tritt an seine Stelle; es bleibt als korrigiert erhalten.</translation>
    </message>
    <message>
        <source>Find a word</source>
        <translation>Begriff suchen</translation>
    </message>
    <message>
        <source>Find an action</source>
        <translation>Befehl finden</translation>
    </message>
    <message>
        <source>Find and mend the cause, and record what was done.</source>
        <translation>Die Ursache finden und beheben und erfassen, was getan wurde.</translation>
    </message>
    <message>
        <source>Find and mend the cause, record what was done, then make the run again.</source>
        <translation>Die Ursache finden und beheben, erfassen, was getan wurde, dann den Messlauf wiederholen.</translation>
    </message>
    <message>
        <source>Find and mend what makes the errors: loss and noise of the pair, its joints and the drop; then make the detector check again.</source>
        <translation>Finden und beheben, was die Fehler erzeugt: Dämpfung und Geräusch der Doppelader, ihre Spleißstellen und die Hauszuführung; dann die Erkennungsprüfung wiederholen.</translation>
    </message>
    <message>
        <source>Find by any number or name   ( / )</source>
        <translation>Beliebige Nummer oder Namen suchen   ( / )</translation>
    </message>
    <message>
        <source>Find orders by any number or name</source>
        <translation>Aufträge nach beliebiger Nummer oder Namen suchen</translation>
    </message>
    <message>
        <source>Find out why the %1 failed and try it again.</source>
        <translation>Grund des Fehlschlags finden und erneut versuchen: %1.</translation>
    </message>
    <message>
        <source>Find the cross with a working pair and have it cleared, then make a new card.</source>
        <translation>Die Berührung mit einer beschalteten Doppelader suchen und beseitigen lassen, dann eine neue Karte anlegen.</translation>
    </message>
    <message>
        <source>Findings of the audit</source>
        <translation>Befunde der Prüfung</translation>
    </message>
    <message>
        <source>Findings of the import</source>
        <translation>Befunde des Einlesens</translation>
    </message>
    <message>
        <source>Finest wire</source>
        <translation>Dünnster Draht</translation>
    </message>
    <message>
        <source>Finest wire: %1 mm; the rule has no figure for wire finer than 26 AWG</source>
        <translation>Dünnster Draht: %1 mm; für Draht dünner als 26 AWG hat die Regel keine Zahl</translation>
    </message>
    <message>
        <source>First it is shown what would become of each line, old and new, and what cannot be. Open orders and lines in service are changed together, all or none; a supervisor does it, and it can be taken back as long as nothing was built on it.</source>
        <translation>Zuerst wird gezeigt, was aus jedem Anschluss würde, alt und neu, und was nicht möglich ist. Offene Aufträge und Anschlüsse in Betrieb werden gemeinsam geändert, alle oder keiner; das tut die Aufsicht, und es lässt sich zurücknehmen, solange nichts darauf aufbaut.</translation>
    </message>
    <message>
        <source>First lets go of the rows, the search, the filters</source>
        <translation>Löst zuerst Auswahl, Suche und Filter</translation>
    </message>
    <message>
        <source>First load coil due at %1: it stands at %2, at most %3 away</source>
        <translation>Erste Pupinspule bei %1 vorgesehen: sie steht bei %2, höchstens %3 daneben</translation>
    </message>
    <message>
        <source>First open criterion</source>
        <translation>Erstes offenes Kriterium</translation>
    </message>
    <message>
        <source>First promised for %1.</source>
        <translation>Zuerst zugesagt für %1.</translation>
    </message>
    <message>
        <source>First rows</source>
        <translation>Erste Zeilen</translation>
    </message>
    <message>
        <source>First visits, failing criteria, ages, exceptions, calibration, troubles</source>
        <translation>Erste Einsätze, nicht erfüllte Kriterien, Alter, Ausnahmen, Kalibrierung, Störungen</translation>
    </message>
    <message>
        <source>Folder</source>
        <translation>Ordner</translation>
    </message>
    <message>
        <source>Folder in which bundles come</source>
        <translation>Ordner, in dem Bündel eintreffen</translation>
    </message>
    <message>
        <source>For a van, from %1. %2.</source>
        <translation>Für einen Wagen, von %1. %2.</translation>
    </message>
    <message>
        <source>For installers; not for customers.</source>
        <translation>Für Monteure; nicht für Kunden.</translation>
    </message>
    <message>
        <source>For the desk; not for customers.</source>
        <translation>Für die Dienststelle; nicht für Kunden.</translation>
    </message>
    <message>
        <source>Foreign battery: %1.</source>
        <translation>Fremde Batterie: %1.</translation>
    </message>
    <message>
        <source>Foreign voltage</source>
        <translation>Fremdspannung</translation>
    </message>
    <message>
        <source>Foreign voltage on a dead pair, good below</source>
        <translation>Fremdspannung auf einer stromlosen Doppelader, gut unter</translation>
    </message>
    <message>
        <source>Foreign voltage on a dead pair, marginal up to</source>
        <translation>Fremdspannung auf einer stromlosen Doppelader, grenzwertig bis</translation>
    </message>
    <message>
        <source>Foreign voltage, alternating and direct, was measured between tip, ring and ground before anything was touched.</source>
        <translation>Fremdspannung, Wechsel- und Gleichspannung, wurde zwischen a‑Ader, b‑Ader und Erde gemessen, bevor etwas berührt wurde.</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Found in: %1.</source>
        <translation>Gefunden in: %1.</translation>
    </message>
    <message>
        <source>Found: %1</source>
        <translation>Befund: %1</translation>
    </message>
    <message>
        <source>French national</source>
        <translation>national, Frankreich</translation>
    </message>
    <message>
        <source>Frequency at which a basic-rate loop is judged</source>
        <translation>Frequenz, bei der eine Basisanschlussleitung beurteilt wird</translation>
    </message>
    <message>
        <source>From %1. Taken in.</source>
        <translation>Von %1. Übernommen.</translation>
    </message>
    <message>
        <source>From %1. Was there already.</source>
        <translation>Von %1. War schon da.</translation>
    </message>
    <message>
        <source>From number</source>
        <translation>Von Rufnummer</translation>
    </message>
    <message>
        <source>From the desk: %1</source>
        <translation>Vom Büro: %1</translation>
    </message>
    <message>
        <source>From the first of ten severely errored seconds in a row up to the first of ten in a row that are not; no errored seconds are counted in it.</source>
        <translation>Von der ersten von zehn stark fehlerhaften Sekunden hintereinander bis zur ersten von zehn hintereinander, die es nicht sind; in ihr werden keine fehlerhaften Sekunden gezählt.</translation>
    </message>
    <message>
        <source>From the make-up on record</source>
        <translation>Nach dem eingetragenen Aufbau</translation>
    </message>
    <message>
        <source>From the office</source>
        <translation>Ab Vermittlungsstelle</translation>
    </message>
    <message>
        <source>Genuine. %1</source>
        <translation>Echt. %1</translation>
    </message>
    <message>
        <source>German national</source>
        <translation>national, Deutschland</translation>
    </message>
    <message>
        <source>Glossary</source>
        <translation>Begriffe</translation>
    </message>
    <message>
        <source>Go along with %1: %2. Stay: %3.</source>
        <translation>Gehen mit %1 mit: %2. Bleiben: %3.</translation>
    </message>
    <message>
        <source>Go there (F2)</source>
        <translation>Dorthin (F2)</translation>
    </message>
    <message>
        <source>Go to the entry of the next step</source>
        <translation>Zur Eingabe des nächsten Schritts</translation>
    </message>
    <message>
        <source>Goes into the history of what is done here.</source>
        <translation>Geht in den Verlauf dessen ein, was hier getan wird.</translation>
    </message>
    <message>
        <source>Good rows go in, bad ones are named here with row, column and reason, and can be written out again. First the serving offices, then the people and instruments, then the orders.</source>
        <translation>Gute Zeilen werden aufgenommen, schlechte hier mit Zeile, Spalte und Grund genannt; sie lassen sich wieder ausgeben. Zuerst die Vermittlungsstellen, dann die Personen und Messgeräte, dann die Aufträge.</translation>
    </message>
    <message>
        <source>Guard the opening at once when the cover comes off. Test the air every time before entry (oxygen 19.5 to 23.5 %, combustible gas under 10 % of the explosive limit) and ventilate. Somebody with first-aid training stays at hand where traffic, water, power cables, an explosive reading, poison or open flame make a hazard.</source>
        <translation>Die Öffnung sofort sichern, wenn der Deckel abgenommen ist. Vor jedem Einstieg die Luft prüfen (Sauerstoff 19,5 bis 23,5 %, brennbares Gas unter 10 % der Explosionsgrenze) und lüften. Jemand mit Erste-Hilfe-Ausbildung bleibt in der Nähe, wo Verkehr, Wasser, Starkstromkabel, ein explosiver Messwert, Gift oder offene Flammen gefährden.</translation>
    </message>
    <message>
        <source>HAZARD open on another pair at these premises (order %1): %2; see its handoff first.</source>
        <translation>GEFAHR offen an einer anderen Doppelader dieses Standorts (Auftrag %1): %2; lesen Sie zuerst die Übergabe.</translation>
    </message>
    <message>
        <source>HAZARD open on pair %1 at these premises (order %2): %3; see its handoff first.</source>
        <translation>GEFAHR offen an der Doppelader %1 dieses Standorts (Auftrag %2): %3; lesen Sie zuerst die Übergabe.</translation>
    </message>
    <message>
        <source>HAZARD open on this pair: %1</source>
        <translation>GEFAHR offen an dieser Doppelader: %1</translation>
    </message>
    <message>
        <source>HAZARD open on this pair: %1; see its handoff first.</source>
        <translation>GEFAHR offen an dieser Doppelader: %1; lesen Sie zuerst die Übergabe.</translation>
    </message>
    <message>
        <source>HAZARD. %1</source>
        <translation>GEFAHR. %1</translation>
    </message>
    <message>
        <source>HAZARD: do not touch the pair</source>
        <translation>GEFAHR: Doppelader nicht berühren</translation>
    </message>
    <message>
        <source>HH:MM:SS</source>
        <translation>HH:MM:SS</translation>
    </message>
    <message>
        <source>HH:MM; left empty: now</source>
        <translation>HH:MM; leer: jetzt</translation>
    </message>
    <message>
        <source>Hand on</source>
        <translation>Weitergeben</translation>
    </message>
    <message>
        <source>Hand on a job that is not accepted</source>
        <translation>Nicht abgenommenen Auftrag weitergeben</translation>
    </message>
    <message>
        <source>Hand on a job that is not done: its page says which layer, which cause, whose part it is and whom to call.</source>
        <translation>Einen unfertigen Auftrag weitergeben: seine Seite sagt, welche Schicht, welche Ursache, wessen Teil es ist und wer anzurufen ist.</translation>
    </message>
    <message>
        <source>Hand on order %1</source>
        <translation>Auftrag %1 weitergeben</translation>
    </message>
    <message>
        <source>Hand them out</source>
        <translation>Mitgeben</translation>
    </message>
    <message>
        <source>Handed on</source>
        <translation>Weitergegeben</translation>
    </message>
    <message>
        <source>Handed on by</source>
        <translation>Weitergegeben durch</translation>
    </message>
    <message>
        <source>Handed on to</source>
        <translation>Weitergegeben an</translation>
    </message>
    <message>
        <source>Handed on to %1</source>
        <translation>Weitergegeben an %1</translation>
    </message>
    <message>
        <source>Handling strand near power wires</source>
        <translation>Tragseil in der Nähe von Starkstromleitungen</translation>
    </message>
    <message>
        <source>Handoff</source>
        <translation>Übergabe</translation>
    </message>
    <message>
        <source>Handoff %1</source>
        <translation>Übergabe %1</translation>
    </message>
    <message>
        <source>Handoff of order %1, continued</source>
        <translation>Übergabe des Auftrags %1, Fortsetzung</translation>
    </message>
    <message>
        <source>Have it turned off and tagged and prove the pair dead, then make a new card.</source>
        <translation>Abschalten und kennzeichnen lassen und die Doppelader spannungsfrei nachweisen, dann eine neue Karte anlegen.</translation>
    </message>
    <message>
        <source>Have the network announce the number of this pair.</source>
        <translation>Die Rufnummer dieser Doppelader vom Netz ansagen lassen.</translation>
    </message>
    <message>
        <source>Have the office assign another, or release the one that is in use.</source>
        <translation>Vom Büro eine andere zuweisen oder die vergebene freigeben lassen.</translation>
    </message>
    <message>
        <source>Have the office check pair and number: this may be another customer's line.</source>
        <translation>Doppelader und Rufnummer vom Büro prüfen lassen: dies kann der Anschluss eines anderen Kunden sein.</translation>
    </message>
    <message>
        <source>Have the office check the services of the line.</source>
        <translation>Die Dienste des Anschlusses vom Büro prüfen lassen.</translation>
    </message>
    <message>
        <source>Have the pair mended or another assigned, then record that it was changed.</source>
        <translation>Die Doppelader instand setzen oder eine andere zuweisen lassen, dann die Änderung erfassen.</translation>
    </message>
    <message>
        <source>Have the record of the pair mended.</source>
        <translation>Die verzeichneten Angaben zur Doppelader berichtigen lassen.</translation>
    </message>
    <message>
        <source>Hawaii Adm. Rules 6-80-97</source>
        <translation>Hawaii Adm. Rules 6-80-97</translation>
    </message>
    <message>
        <source>Hawaii Adm. Rules 6-80-97 and 83 Ill. Adm. Code 730.525(c)</source>
        <translation>Hawaii Adm. Rules 6-80-97 und 83 Ill. Adm. Code 730.525(c)</translation>
    </message>
    <message>
        <source>Hazard</source>
        <translation>Gefahr</translation>
    </message>
    <message>
        <source>Hazard closed: %1, says %2</source>
        <translation>Gefahr behoben: %1, sagt %2</translation>
    </message>
    <message>
        <source>Hazard closed: %1, says %2, reference %3</source>
        <translation>Gefahr behoben: %1, sagt %2, Zeichen %3</translation>
    </message>
    <message>
        <source>Hazard read: %1</source>
        <translation>Gefahr gemessen: %1</translation>
    </message>
    <message>
        <source>Hazard: %1. Stop, move away, report.</source>
        <translation>Gefahr: %1. Aufhören, weggehen, melden.</translation>
    </message>
    <message>
        <source>Hazards</source>
        <translation>Gefahren</translation>
    </message>
    <message>
        <source>Head number</source>
        <translation>Kopfnummer</translation>
    </message>
    <message>
        <source>Head number and range are of a point-to-point line, and this order is for another.</source>
        <translation>Kopfnummer und Nummernbereich gehören zu einem Punkt-zu-Punkt-Anschluss, und dieser Auftrag ist für einen anderen.</translation>
    </message>
    <message>
        <source>Held</source>
        <translation>Zurückgehalten</translation>
    </message>
    <message>
        <source>Held, for identifiers in error or taken: %1.</source>
        <translation>Zurückgehalten, weil Kennungen fehlerhaft oder vergeben sind: %1.</translation>
    </message>
    <message>
        <source>Held: its identifiers are in error or taken</source>
        <translation>Zurückgehalten: Kennungen fehlerhaft oder vergeben</translation>
    </message>
    <message>
        <source>Help on %1</source>
        <translation>Hilfe zu %1</translation>
    </message>
    <message>
        <source>High &amp;contrast</source>
        <translation>Hoher &amp;Kontrast</translation>
    </message>
    <message>
        <source>High and low tones of a voice arrive about equally loud.</source>
        <translation>Hohe und tiefe Töne einer Stimme kommen etwa gleich laut an.</translation>
    </message>
    <message>
        <source>High tones of a voice arrive a little fainter than low ones.</source>
        <translation>Hohe Töne einer Stimme kommen etwas leiser an als tiefe.</translation>
    </message>
    <message>
        <source>High tones of a voice arrive fainter than low ones.</source>
        <translation>Hohe Töne einer Stimme kommen leiser an als tiefe.</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Hold it beside the paper</source>
        <translation>Mit dem Papier vergleichen</translation>
    </message>
    <message>
        <source>Holds from the next start on.</source>
        <translation>Gilt ab dem nächsten Start.</translation>
    </message>
    <message>
        <source>Holds until</source>
        <translation>Gilt bis</translation>
    </message>
    <message>
        <source>Holds what an analog line gives the customer, its current, loss, noise and ringing, against the limits.</source>
        <translation>Hält, was ein Analoganschluss dem Kunden gibt, Strom, Dämpfung, Geräusch und Ruf, gegen die Grenzwerte.</translation>
    </message>
    <message>
        <source>Holds what was measured on the pair against the limits and against what its make-up predicts.</source>
        <translation>Hält, was an der Doppelader gemessen wurde, gegen die Grenzwerte und gegen die Vorausberechnung aus ihrem Aufbau.</translation>
    </message>
    <message>
        <source>How alike the two wires of a pair are against ground; here power influence less circuit noise, in dB.</source>
        <translation>Wie gleich die beiden Adern gegen Erde sind; hier Starkstrombeeinflussung minus Leitungsgeräusch, in dB.</translation>
    </message>
    <message>
        <source>How much weaker a signal of one frequency arrives because the loop is there.</source>
        <translation>Wie viel schwächer ein Signal einer Frequenz ankommt, weil die Leitung dazwischen liegt.</translation>
    </message>
    <message>
        <source>How sure</source>
        <translation>Wie sicher</translation>
    </message>
    <message>
        <source>How the TEI is set in the terminal.</source>
        <translation>Wie der TEI im Endgerät eingestellt ist.</translation>
    </message>
    <message>
        <source>How the hazard was closed</source>
        <translation>Wie die Gefahr behoben wurde</translation>
    </message>
    <message>
        <source>How the serving office has built the line.</source>
        <translation>Wie die Vermittlungsstelle den Anschluss eingerichtet hat.</translation>
    </message>
    <message>
        <source>How the terminal is set: automatic or fixed TEI as ordered, and no fixed TEI twice on the line.</source>
        <translation>Wie das Endgerät eingestellt ist: TEI automatisch oder fest wie bestellt, und kein fester TEI zweimal am Anschluss.</translation>
    </message>
    <message>
        <source>How the test is made</source>
        <translation>So wird gemessen</translation>
    </message>
    <message>
        <source>How the visit went</source>
        <translation>Wie der Einsatz verlief</translation>
    </message>
    <message>
        <source>Hz; left empty: %1</source>
        <translation>Hz; leer: %1</translation>
    </message>
    <message>
        <source>I have received this line, this certificate and the settings for my equipment, and I know the exceptions.</source>
        <translation>Ich habe diesen Anschluss, dieses Zertifikat und die Einstellungen für mein Gerät erhalten und kenne die Ausnahmen.</translation>
    </message>
    <message>
        <source>I have received this line, this certificate and the settings for my equipment.</source>
        <translation>Ich habe diesen Anschluss, dieses Zertifikat und die Einstellungen für mein Gerät erhalten.</translation>
    </message>
    <message>
        <source>I have tested this line; the results stated here are those that were read, and the exceptions stand as stated.</source>
        <translation>Ich habe diesen Anschluss geprüft; die Ergebnisse sind hier so angegeben, wie sie abgelesen wurden, und die Ausnahmen bestehen wie angegeben.</translation>
    </message>
    <message>
        <source>I have tested this line; the results stated here are those that were read.</source>
        <translation>Ich habe diesen Anschluss geprüft; die Ergebnisse sind hier so angegeben, wie sie abgelesen wurden.</translation>
    </message>
    <message>
        <source>ISDN basic-rate line</source>
        <translation>ISDN-Basisanschluss</translation>
    </message>
    <message>
        <source>Identified channel does not exist</source>
        <translation>Angegebener Kanal existiert nicht</translation>
    </message>
    <message>
        <source>Identifier (SPID)</source>
        <translation>Kennung (SPID)</translation>
    </message>
    <message>
        <source>Identifiers</source>
        <translation>Kennungen</translation>
    </message>
    <message>
        <source>Identifiers of the order</source>
        <translation>Kennungen des Auftrags</translation>
    </message>
    <message>
        <source>If the file is damaged, restore a backup (loopwright-cli restore). If a newer version made it, start that version.</source>
        <translation>Ist die Datei beschädigt, eine Sicherung wiederherstellen (loopwright-cli restore). Stammt sie von einer neueren Version, diese Version starten.</translation>
    </message>
    <message>
        <source>If the line fails, call %1, and name %2.</source>
        <translation>Wenn der Anschluss ausfällt, rufen Sie %1 an und nennen Sie: %2.</translation>
    </message>
    <message>
        <source>Import</source>
        <translation>Einlesen</translation>
    </message>
    <message>
        <source>Import a file</source>
        <translation>Datei einlesen</translation>
    </message>
    <message>
        <source>Import a file of orders or add one by hand; or look around in the demo.</source>
        <translation>Eine Datei mit Aufträgen einlesen oder einen von Hand anlegen; oder sich in der Demo umsehen.</translation>
    </message>
    <message>
        <source>Import a file with the columns installer, name and role.</source>
        <translation>Eine Datei mit den Spalten installer, name und role einlesen.</translation>
    </message>
    <message>
        <source>Import a file with the columns instrument, serial, kind, calibrated_on and calibration_due.</source>
        <translation>Eine Datei mit den Spalten instrument, serial, kind, calibrated_on und calibration_due einlesen.</translation>
    </message>
    <message>
        <source>Import a file with the columns office, name, protocol_variant and test_lines.</source>
        <translation>Eine Datei mit den Spalten office, name, protocol_variant und test_lines einlesen.</translation>
    </message>
    <message>
        <source>Import a file…   Ctrl+I</source>
        <translation>Datei einlesen…   Strg+I</translation>
    </message>
    <message>
        <source>In a few words</source>
        <translation>In wenigen Worten</translation>
    </message>
    <message>
        <source>In a form</source>
        <translation>In einem Formular</translation>
    </message>
    <message>
        <source>In a table or list</source>
        <translation>In einer Tabelle oder Liste</translation>
    </message>
    <message>
        <source>In order</source>
        <translation>In Ordnung</translation>
    </message>
    <message>
        <source>In the file</source>
        <translation>In der Datei</translation>
    </message>
    <message>
        <source>In the quiet seconds before the errors were sent there came %1: the line makes errors.</source>
        <translation>%1 in den ruhigen Sekunden vor dem Einfügen der Fehler: die Leitung erzeugt Fehler.</translation>
    </message>
    <message>
        <source>In the records as it stands here</source>
        <translation>Im Datenbestand, so wie hier</translation>
    </message>
    <message>
        <source>In the records, and held</source>
        <translation>Im Datenbestand, aber zurückgehalten</translation>
    </message>
    <message>
        <source>In the van: Vans, “Key of this station…”. That file says which station it is.</source>
        <translation>Im Wagen: Menü Wagen, „Schlüssel dieser Station…“. Diese Datei sagt, welche Station es ist.</translation>
    </message>
    <message>
        <source>Incoming calls barred within closed user group</source>
        <translation>Ankommende Verbindungen in der geschlossenen Benutzergruppe gesperrt</translation>
    </message>
    <message>
        <source>Incompatible destination</source>
        <translation>Unverträgliches Ziel</translation>
    </message>
    <message>
        <source>Incomplete</source>
        <translation>Unvollständig</translation>
    </message>
    <message>
        <source>Incomplete: evidence is missing.</source>
        <translation>Unvollständig: Nachweise fehlen.</translation>
    </message>
    <message>
        <source>Inconsistency in outgoing access information</source>
        <translation>Widerspruch in der abgehenden Zugangsinformation</translation>
    </message>
    <message>
        <source>Information element non-existent</source>
        <translation>Informationselement existiert nicht</translation>
    </message>
    <message>
        <source>Inject errors on %1 and record what the test set saw.</source>
        <translation>Auf %1 Fehler einfügen und erfassen, was das Prüfgerät gesehen hat.</translation>
    </message>
    <message>
        <source>Input/output error</source>
        <translation>Ein- oder Ausgabefehler</translation>
    </message>
    <message>
        <source>Inspect it. Test it as well where it is a dead end, carries only drops or fewer than ten wires, stands between long unguyed spans (over 165 ft) or at a downward change of grade, or where your work changes its tension.</source>
        <translation>Den Mast ansehen. Ihn auch prüfen, wo er Endmast ist, nur Hauszuführungen oder weniger als zehn Drähte trägt, zwischen langen unverankerten Feldern (über 165 ft) oder an einem Gefälleknick steht, oder wo die Arbeit seinen Zug ändert.</translation>
    </message>
    <message>
        <source>Inspect, set on firm ground, tie off. From 4 ft up, telecommunications work asks for fall protection.</source>
        <translation>Prüfen, auf festen Grund stellen, anbinden. Ab 4 ft Höhe verlangt Fernmeldearbeit eine Absturzsicherung.</translation>
    </message>
    <message>
        <source>Installer</source>
        <translation>Monteur</translation>
    </message>
    <message>
        <source>Installer %1 is not registered.</source>
        <translation>Monteur %1 ist nicht eingetragen.</translation>
    </message>
    <message>
        <source>Installer: %1, signed after the first issue, on %2</source>
        <translation>Monteur: %1, nach der ersten Ausgabe unterschrieben, am %2</translation>
    </message>
    <message>
        <source>Installer: not signed when this was issued. Name, date, signature</source>
        <translation>Monteur: bei der Ausstellung nicht unterschrieben. Name, Tag, Unterschrift</translation>
    </message>
    <message>
        <source>Installers and other people</source>
        <translation>Monteure und andere Personen</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Messgerät</translation>
    </message>
    <message>
        <source>Instrument %1 is not registered.</source>
        <translation>Messgerät %1 steht nicht im Register.</translation>
    </message>
    <message>
        <source>Instrument %1 was not within its calibration on %2.</source>
        <translation>Messgerät %1 war am %2 nicht gültig kalibriert.</translation>
    </message>
    <message>
        <source>Instrument %1 was within its calibration on %2.</source>
        <translation>Messgerät %1 war am %2 gültig kalibriert.</translation>
    </message>
    <message>
        <source>Instrument said</source>
        <translation>Angabe des Messgeräts</translation>
    </message>
    <message>
        <source>Instrument that the readings are made with</source>
        <translation>Messgerät, mit dem gemessen wird</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Messgeräte</translation>
    </message>
    <message>
        <source>Instruments by the day on which their calibration is due, and how many open orders have evidence made with them. An instrument belongs to no office, installer, cable or variant.</source>
        <translation>Messgeräte nach dem Tag, an dem ihre Kalibrierung fällig ist, und wie viele offene Aufträge mit ihnen gemacht wurden. Ein Messgerät gehört zu keiner Vermittlungsstelle, keinem Monteur, Kabel und keiner Variante.</translation>
    </message>
    <message>
        <source>Insulation</source>
        <translation>Isolation</translation>
    </message>
    <message>
        <source>Insulation of the pair and its shield's ground.</source>
        <translation>Isolation der Doppelader und Erdung ihres Schirms.</translation>
    </message>
    <message>
        <source>Insulation resistance, good from</source>
        <translation>Isolationswiderstand, gut ab</translation>
    </message>
    <message>
        <source>Insulation resistance, marginal from</source>
        <translation>Isolationswiderstand, grenzwertig ab</translation>
    </message>
    <message>
        <source>Insulation tests</source>
        <translation>Isolationsmessungen</translation>
    </message>
    <message>
        <source>Interworking, unspecified</source>
        <translation>Netzübergang, nicht näher bestimmt</translation>
    </message>
    <message>
        <source>Invalid call reference</source>
        <translation>Ungültige Verbindungskennung</translation>
    </message>
    <message>
        <source>Invalid information element contents</source>
        <translation>Ungültiger Inhalt eines Informationselements</translation>
    </message>
    <message>
        <source>Invalid message, unspecified</source>
        <translation>Ungültige Nachricht, nicht näher bestimmt</translation>
    </message>
    <message>
        <source>Invalid number format (incomplete)</source>
        <translation>Ungültiges Rufnummernformat (unvollständig)</translation>
    </message>
    <message>
        <source>Invalid transit network selection</source>
        <translation>Ungültige Auswahl des Transitnetzes</translation>
    </message>
    <message>
        <source>Invented records go into an empty database only.</source>
        <translation>Erfundene Daten gehen nur in eine leere Datenbank.</translation>
    </message>
    <message>
        <source>Is a directory</source>
        <translation>Ist ein Verzeichnis</translation>
    </message>
    <message>
        <source>Is in the file.</source>
        <translation>Ist in der Datei.</translation>
    </message>
    <message>
        <source>Is it the pair of the order, free of load coils?</source>
        <translation>Ist es die Doppelader des Auftrags, ohne Pupinspulen?</translation>
    </message>
    <message>
        <source>Is it the pair of the order? Look for taps and coils on record.</source>
        <translation>Ist es die Doppelader des Auftrags? Nach verzeichneten Stichleitungen und Pupinspulen sehen.</translation>
    </message>
    <message>
        <source>Is the office connected to the pair?</source>
        <translation>Ist die Vermittlungsstelle mit der Doppelader verbunden?</translation>
    </message>
    <message>
        <source>Is the pair connected to the line equipment of the order?</source>
        <translation>Ist die Doppelader mit der Teilnehmerschaltung des Auftrags verbunden?</translation>
    </message>
    <message>
        <source>Is the place wet?</source>
        <translation>Ist es dort nass?</translation>
    </message>
    <message>
        <source>Is the protocol variant in the terminal wrong?</source>
        <translation>Ist die Protokollvariante im Endgerät falsch?</translation>
    </message>
    <message>
        <source>Issue</source>
        <translation>Ausgabe</translation>
    </message>
    <message>
        <source>Issue %1 of certificate %2 has no event; verify the history.</source>
        <translation>Die Ausstellung %1 des Zertifikats %2 hat kein Ereignis; bitte den Verlauf prüfen.</translation>
    </message>
    <message>
        <source>Issue %1, signed on %2</source>
        <translation>Ausgabe %1, unterschrieben am %2</translation>
    </message>
    <message>
        <source>Issue it and print…</source>
        <translation>Ausstellen und drucken…</translation>
    </message>
    <message>
        <source>Issue it and save the PDF</source>
        <translation>Ausstellen und PDF speichern</translation>
    </message>
    <message>
        <source>Issue it signed and print…</source>
        <translation>Unterschrieben ausstellen und drucken…</translation>
    </message>
    <message>
        <source>Issue it signed and save the PDF</source>
        <translation>Unterschrieben ausstellen und PDF speichern</translation>
    </message>
    <message>
        <source>Issue the set and print…</source>
        <translation>Satz ausstellen und drucken…</translation>
    </message>
    <message>
        <source>Issue the set and save it</source>
        <translation>Satz ausstellen und speichern</translation>
    </message>
    <message>
        <source>Issued</source>
        <translation>Ausgestellt</translation>
    </message>
    <message>
        <source>Issued by</source>
        <translation>Ausgestellt von</translation>
    </message>
    <message>
        <source>Issued on %1 for order %2</source>
        <translation>Ausgestellt am %1 für den Auftrag %2</translation>
    </message>
    <message>
        <source>Issued, and the evidence is another one since: issue it anew; the new one takes the place of that one.</source>
        <translation>Ausgestellt, aber die Nachweise sind seither andere: neu ausstellen; das neue ersetzt das bisherige.</translation>
    </message>
    <message>
        <source>Issued. Complete the order.</source>
        <translation>Ausgestellt. Auftrag abschließen.</translation>
    </message>
    <message>
        <source>Issued. Complete the order; a further issue is a copy with the same number.</source>
        <translation>Ausgestellt. Auftrag abschließen; eine weitere Ausfertigung ist eine Kopie mit derselben Nummer.</translation>
    </message>
    <message>
        <source>Issuer of the certificates</source>
        <translation>Aussteller der Zertifikate</translation>
    </message>
    <message>
        <source>It brings a certificate with the number "%1", which is none.</source>
        <translation>Es bringt ein Zertifikat mit der Nummer „%1“, die keine ist.</translation>
    </message>
    <message>
        <source>It brings a fact as the work of another station.</source>
        <translation>Es bringt einen Eintrag als Arbeit einer anderen Station.</translation>
    </message>
    <message>
        <source>It brings certificate %1 for order %2, and here it is that of order %3.</source>
        <translation>Es bringt das Zertifikat %1 für Auftrag %2, und hier ist es das von Auftrag %3.</translation>
    </message>
    <message>
        <source>It brings certificate %1, whose number is that of another station. If the van was restored, add it under the name that it had.</source>
        <translation>Es bringt das Zertifikat %1, dessen Nummer die einer anderen Station ist. Wurde der Wagen wiederhergestellt, nehmen Sie ihn unter dem Namen auf, den er hatte.</translation>
    </message>
    <message>
        <source>It can be closed as it is; what is not shown is told.</source>
        <translation>Abschließen geht auch so; was nicht nachgewiesen ist, wird genannt.</translation>
    </message>
    <message>
        <source>It can be issued when the order is accepted.</source>
        <translation>Ausstellen geht, sobald der Auftrag abgenommen ist.</translation>
    </message>
    <message>
        <source>It cannot be read as a number: %1.</source>
        <translation>Nicht als Rufnummer lesbar: %1.</translation>
    </message>
    <message>
        <source>It counts for this certificate</source>
        <translation>Er zählt für dieses Zertifikat</translation>
    </message>
    <message>
        <source>It ends for every line here; still open: %1.</source>
        <translation>Er endet für jeden Anschluss hier; noch offen: %1.</translation>
    </message>
    <message>
        <source>It ends in %1, which a spreadsheet adds: leave that out</source>
        <translation>Endet auf %1, wie es eine Tabellenkalkulation anfügt: weglassen</translation>
    </message>
    <message>
        <source>It goes on from event %1 of the van, and only %2 are here: deliver the bundle before it, then this one again.</source>
        <translation>Es setzt bei Ereignis %1 des Wagens fort, und hier sind nur %2: Liefern Sie das Bündel davor ein, dann dieses noch einmal.</translation>
    </message>
    <message>
        <source>It has other values. Open it to change it, or give this order another number.</source>
        <translation>Er hat andere Werte. Öffnen Sie ihn zum Ändern, oder geben Sie diesem Auftrag eine andere Nummer.</translation>
    </message>
    <message>
        <source>It holds</source>
        <translation>Inhalt</translation>
    </message>
    <message>
        <source>It holds %1, which is no number of this line that moves.</source>
        <translation>Enthält %1: keine Rufnummer dieses Anschlusses, die wechselt.</translation>
    </message>
    <message>
        <source>It holds area code %1 and is kept: whether the switch takes it as it is, the provider says.</source>
        <translation>Enthält die Vorwahl %1 und bleibt: ob die Vermittlung das so annimmt, sagt der Anbieter.</translation>
    </message>
    <message>
        <source>It holds area code %1, but has no shape that is documented for %2: the provider's order paper says the new one.</source>
        <translation>Enthält die Vorwahl %1, hat aber keine für %2 dokumentierte Form: die neue steht im Auftragsschreiben des Anbieters.</translation>
    </message>
    <message>
        <source>It holds no longer. %1</source>
        <translation>Es gilt nicht mehr. %1</translation>
    </message>
    <message>
        <source>It holds no longer: more was told since.</source>
        <translation>Er besteht nicht mehr: Seitdem wurde mehr mitgeteilt.</translation>
    </message>
    <message>
        <source>It holds no number, SPID or pair until this is mended:</source>
        <translation>Er belegt keine Rufnummer, SPID oder Doppelader, bis dies behoben ist:</translation>
    </message>
    <message>
        <source>It holds the number of terminal %1, whose SPID holds this one's: swap the two</source>
        <translation>Enthält die Rufnummer von Endgerät %1, und dessen SPID die von diesem: beide tauschen</translation>
    </message>
    <message>
        <source>It is OPEN.</source>
        <translation>Sie ist OFFEN.</translation>
    </message>
    <message>
        <source>It is dated %1, before the hazard was read (%2): it closes nothing.</source>
        <translation>Der Eintrag ist vom %1, die Gefahr wurde erst danach gemessen (%2): damit ist nichts behoben.</translation>
    </message>
    <message>
        <source>It is for station %1, and this is %2: give it to that van. If this van had that tag and was restored from a backup, have the office add it again, and hand its orders out anew.</source>
        <translation>Es ist für Station %1, und hier ist %2: Geben Sie es jenem Wagen. Hatte dieser Wagen jenes Kürzel und wurde aus einer Sicherung wiederhergestellt, lassen Sie ihn im Büro neu aufnehmen und seine Aufträge neu mitgeben.</translation>
    </message>
    <message>
        <source>It is in a number or name of %1.</source>
        <translation>Es kommt in einer Nummer oder einem Namen vor: %1.</translation>
    </message>
    <message>
        <source>It is not signed yet: %1. Sign it, or issue it once more to leave it unsigned; the paper then says so, and can be signed later as a further issue.</source>
        <translation>Noch nicht unterschrieben: %1. Unterschreiben, oder noch einmal ausstellen, um es ohne Unterschrift zu lassen; das Papier sagt es dann und kann später als weitere Ausfertigung unterschrieben werden.</translation>
    </message>
    <message>
        <source>It is noted what goes back, and the file is missing: %1. The same command writes it again.</source>
        <translation>Es ist vermerkt, was zurückgeht, und die Datei fehlt: %1. Derselbe Befehl schreibt sie noch einmal.</translation>
    </message>
    <message>
        <source>It is open.</source>
        <translation>Sie ist offen.</translation>
    </message>
    <message>
        <source>It is seen, and there is nothing else that it could be settled for.</source>
        <translation>Es ist gesehen, und anders als so kann es nicht geklärt werden.</translation>
    </message>
    <message>
        <source>It is the certificate that was issued, unaltered.</source>
        <translation>Es ist das Zertifikat, das ausgestellt wurde, unverändert.</translation>
    </message>
    <message>
        <source>It no longer counts. The entry stays on record with your reason.</source>
        <translation>Der Eintrag zählt nicht mehr. Er bleibt mit Ihrer Begründung erhalten.</translation>
    </message>
    <message>
        <source>It rang: answer it</source>
        <translation>Es hat geklingelt: annehmen</translation>
    </message>
    <message>
        <source>It repeats %1.</source>
        <translation>Wiederholung von %1.</translation>
    </message>
    <message>
        <source>It says that it is signed with the key %1, which is none of those given, nor endorsed by one of them.</source>
        <translation>Es sagt, es sei mit dem Schlüssel %1 signiert, der keiner der angegebenen ist und von keinem von ihnen beglaubigt.</translation>
    </message>
    <message>
        <source>It says that nothing was found, and beside it what was done: nothing counts as done, and the next run counts only without any error. If something was done, record what it was.</source>
        <translation>Angegeben ist, dass nichts gefunden wurde, und daneben, was getan wurde: es gilt nichts als getan, und der nächste Messlauf zählt nur ganz ohne Fehler. Wurde etwas getan, erfassen, was es war.</translation>
    </message>
    <message>
        <source>It says what is recorded already: nothing is corrected.</source>
        <translation>Es sagt, was schon eingetragen ist: nichts wird berichtigt.</translation>
    </message>
    <message>
        <source>It stands with order %1, where the visit began.</source>
        <translation>Es steht bei Auftrag %1, wo der Einsatz begann.</translation>
    </message>
    <message>
        <source>It stopped in the middle of %1: %2. What came before is in; the same command takes in the rest.</source>
        <translation>Mitten in %1 brach es ab: %2. Was davor kam, ist aufgenommen; derselbe Befehl nimmt den Rest auf.</translation>
    </message>
    <message>
        <source>It takes the place of certificate %1, issued on %2, because: %3.</source>
        <translation>Es tritt an die Stelle des Zertifikats %1, ausgestellt am %2, weil: %3.</translation>
    </message>
    <message>
        <source>It takes the place of the entry that it corrects.</source>
        <translation>Das tritt an die Stelle des korrigierten Eintrags.</translation>
    </message>
    <message>
        <source>It tells nothing of what was done in the van.</source>
        <translation>Es sagt nichts darüber, was im Wagen geschah.</translation>
    </message>
    <message>
        <source>It waits for</source>
        <translation>Es wartet auf</translation>
    </message>
    <message>
        <source>It was accepted by exception: who authorised that, and why, stands in the box.</source>
        <translation>Er wurde mit Ausnahme abgenommen: Wer das erlaubt hat und warum, steht im Kasten.</translation>
    </message>
    <message>
        <source>It was closed on %1: %2</source>
        <translation>Sie wurde am %1 abgeschlossen: %2</translation>
    </message>
    <message>
        <source>It was issued by %1, whose work is not here yet.</source>
        <translation>Es wurde von %1 ausgestellt, dessen Arbeit noch nicht hier ist.</translation>
    </message>
    <message>
        <source>It was made for the issuer with the key %1.</source>
        <translation>Es wurde für den Aussteller mit dem Schlüssel %1 gemacht.</translation>
    </message>
    <message>
        <source>It was not heard which number the network announces on this pair.</source>
        <translation>Es wurde nicht gehört, welche Rufnummer das Netz auf dieser Doppelader ansagt.</translation>
    </message>
    <message>
        <source>It was not measured how loud a voice arrives.</source>
        <translation>Es wurde nicht gemessen, wie laut eine Stimme ankommt.</translation>
    </message>
    <message>
        <source>It was not measured how much power lines disturb the cable.</source>
        <translation>Es wurde nicht gemessen, wie stark Starkstromleitungen das Kabel stören.</translation>
    </message>
    <message>
        <source>It was not measured how quiet the line is.</source>
        <translation>Es wurde nicht gemessen, wie still die Leitung ist.</translation>
    </message>
    <message>
        <source>It was not measured whether high and low tones arrive alike.</source>
        <translation>Es wurde nicht gemessen, ob hohe und tiefe Töne gleich ankommen.</translation>
    </message>
    <message>
        <source>It was not measured which current reaches a telephone.</source>
        <translation>Es wurde nicht gemessen, welchen Strom ein Telefon erhält.</translation>
    </message>
    <message>
        <source>It was not shown how many errors the line makes.</source>
        <translation>Es wurde nicht nachgewiesen, wie viele Fehler die Leitung erzeugt.</translation>
    </message>
    <message>
        <source>It was not shown that dial tone is heard.</source>
        <translation>Es wurde nicht nachgewiesen, dass der Wählton zu hören ist.</translation>
    </message>
    <message>
        <source>It was not shown that each terminal has an address of its own.</source>
        <translation>Es wurde nicht nachgewiesen, dass jedes Endgerät eine eigene Adresse hat.</translation>
    </message>
    <message>
        <source>It was not shown that the line runs in step with the serving office.</source>
        <translation>Es wurde nicht nachgewiesen, dass die Leitung mit der Vermittlungsstelle im Gleichlauf ist.</translation>
    </message>
    <message>
        <source>It was not shown that the pair of wires is fit for this service.</source>
        <translation>Es wurde nicht nachgewiesen, dass die Doppelader für diesen Dienst geeignet ist.</translation>
    </message>
    <message>
        <source>It was not shown that the serving office recognises each terminal.</source>
        <translation>Es wurde nicht nachgewiesen, dass die Vermittlungsstelle jedes Endgerät erkennt.</translation>
    </message>
    <message>
        <source>It was not shown that the telephone rings.</source>
        <translation>Es wurde nicht nachgewiesen, dass das Telefon klingelt.</translation>
    </message>
    <message>
        <source>It was not shown that the test set would have seen an error.</source>
        <translation>Es wurde nicht nachgewiesen, dass das Prüfgerät einen Fehler gesehen hätte.</translation>
    </message>
    <message>
        <source>It was not shown that the test sets used were within their calibration.</source>
        <translation>Es wurde nicht nachgewiesen, dass die benutzten Prüfgeräte gültig kalibriert waren.</translation>
    </message>
    <message>
        <source>It was not shown whether the two wires are alike enough to keep hum out.</source>
        <translation>Es wurde nicht nachgewiesen, ob die beiden Adern gleich genug sind, um Brummen fernzuhalten.</translation>
    </message>
    <message>
        <source>It was not shown which way round the two wires are.</source>
        <translation>Es wurde nicht nachgewiesen, wie herum die beiden Adern angeschlossen sind.</translation>
    </message>
    <message>
        <source>It was read at: %1.</source>
        <translation>Sie wurde hier gemessen: %1.</translation>
    </message>
    <message>
        <source>It was read on pair %1.</source>
        <translation>Sie wurde an Doppelader %1 gemessen.</translation>
    </message>
    <message>
        <source>It was recorded, but the order cannot be read anew: %1</source>
        <translation>Es wurde erfasst, aber der Auftrag lässt sich nicht neu lesen: %1</translation>
    </message>
    <message>
        <source>It was restored, or has a new key</source>
        <translation>Es wurde wiederhergestellt oder hat einen neuen Schlüssel</translation>
    </message>
    <message>
        <source>It was said how it was closed; a clear card is still to come.</source>
        <translation>Es wurde gesagt, wie sie behoben wurde; eine freie Karte steht noch aus.</translation>
    </message>
    <message>
        <source>It was said how the hazard read on %1 was closed.</source>
        <translation>Wie die am %1 gemessene Gefahr behoben wurde, ist angegeben.</translation>
    </message>
    <message>
        <source>It was said what was done after the failed run on %1.</source>
        <translation>Was nach dem nicht bestandenen Messlauf auf %1 getan wurde, ist angegeben.</translation>
    </message>
    <message>
        <source>It was stopped before an order was taken in; the same files again take them in.</source>
        <translation>Es wurde gestoppt, bevor ein Auftrag übernommen wurde; dieselben Dateien übernehmen sie beim nächsten Mal.</translation>
    </message>
    <message>
        <source>It was stopped. Orders taken in: %1. They stay, and the same files again take in the rest.</source>
        <translation>Es wurde gestoppt. Übernommene Aufträge: %1. Sie bleiben, und dieselben Dateien übernehmen beim nächsten Mal den Rest.</translation>
    </message>
    <message>
        <source>It was stopped; nothing was changed.</source>
        <translation>Es wurde angehalten; nichts wurde geändert.</translation>
    </message>
    <message>
        <source>It was stopped; nothing was printed. Copies that are recorded: %1.</source>
        <translation>Es wurde angehalten; nichts wurde gedruckt. Erfasste Zertifikatskopien: %1.</translation>
    </message>
    <message>
        <source>It was stopped; nothing was taken back.</source>
        <translation>Es wurde angehalten; nichts wurde zurückgenommen.</translation>
    </message>
    <message>
        <source>It was stopped; nothing was written.</source>
        <translation>Es wurde angehalten; nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>It was stopped; pages printed: %1 of %2.</source>
        <translation>Es wurde angehalten; gedruckte Seiten: %1 von %2.</translation>
    </message>
    <message>
        <source>It was stopped; papers in the folder: %1 of %2.</source>
        <translation>Es wurde angehalten; Papiere im Ordner: %1 von %2.</translation>
    </message>
    <message>
        <source>It was worked with %1: the order takes these values back.</source>
        <translation>Gearbeitet wurde mit %1: Der Auftrag erhält diese Werte zurück.</translation>
    </message>
    <message>
        <source>It was written before what is here: nothing was taken back.</source>
        <translation>Es wurde vor dem geschrieben, was hier ist: Nichts wurde zurückgenommen.</translation>
    </message>
    <message>
        <source>It would be read as another number.</source>
        <translation>Sie würde als andere Rufnummer gelesen.</translation>
    </message>
    <message>
        <source>Its area code is not known: write all ten digits.</source>
        <translation>Die Vorwahl ist nicht bekannt: alle zehn Ziffern schreiben.</translation>
    </message>
    <message>
        <source>Its cause: %1; by %2, %3.</source>
        <translation>Ihre Ursache: %1; durch %2, %3.</translation>
    </message>
    <message>
        <source>Its cause: %1; by %2, reference %3, %4.</source>
        <translation>Ihre Ursache: %1; durch %2, Zeichen %3, %4.</translation>
    </message>
    <message>
        <source>Its columns, a sample…</source>
        <translation>Spalten und Muster…</translation>
    </message>
    <message>
        <source>Its due date is on the board, but it holds no number, SPID or pair until this is mended:</source>
        <translation>Er steht mit seinem Fälligkeitstag auf der Tafel, belegt aber keine Rufnummer, SPID oder Doppelader, bis dies behoben ist:</translation>
    </message>
    <message>
        <source>Its number is of station %1, whose records these are, and they do not hold it: they never gave it, or they are older than the paper.</source>
        <translation>Seine Nummer ist von Station %1, deren Datenbestand dies ist, und er enthält sie nicht: er hat sie nie vergeben, oder er ist älter als das Papier.</translation>
    </message>
    <message>
        <source>Its signature is not that of the key that it names.</source>
        <translation>Seine Unterschrift ist nicht die des Schlüssels, den es nennt.</translation>
    </message>
    <message>
        <source>Its totals contradict each other: %1.</source>
        <translation>Seine Summen widersprechen einander: %1.</translation>
    </message>
    <message>
        <source>JSON files (*.json)</source>
        <translation>JSON-Dateien (*.json)</translation>
    </message>
    <message>
        <source>Jack or terminal</source>
        <translation>Dose oder Klemme</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>Job %1</source>
        <translation>Auftrag %1</translation>
    </message>
    <message>
        <source>Job %1 cannot be opened</source>
        <translation>Auftrag %1 lässt sich nicht öffnen</translation>
    </message>
    <message>
        <source>Job line</source>
        <translation>Schrittleiste</translation>
    </message>
    <message>
        <source>Job line, %1</source>
        <translation>Schrittleiste, %1</translation>
    </message>
    <message>
        <source>Jobs of %1</source>
        <translation>Einsätze am %1</translation>
    </message>
    <message>
        <source>Joints, taps and load coils of the pair.</source>
        <translation>Spleißstellen, Stichleitungen und Pupinspulen der Doppelader.</translation>
    </message>
    <message>
        <source>Judge its loops</source>
        <translation>Leitungen beurteilen</translation>
    </message>
    <message>
        <source>Judged by limit set %1.</source>
        <translation>Beurteilt nach dem Grenzwertsatz %1.</translation>
    </message>
    <message>
        <source>Judges every pair that an order holds, working or planned, by the newest make-up that was recorded of it: whether it carries basic rate, and which tap or coil to take out where it does not.</source>
        <translation>Beurteilt jede Doppelader, die ein Auftrag belegt, in Betrieb oder geplant, nach dem zuletzt erfassten Leitungsaufbau: ob sie einen Basisanschluss trägt und, wenn nicht, welche Stichleitung oder Pupinspule zu entfernen ist.</translation>
    </message>
    <message>
        <source>Just enough current reaches a telephone for it to work.</source>
        <translation>Ein Telefon erhält gerade genug Strom, um zu arbeiten.</translation>
    </message>
    <message>
        <source>Keep away and have the foreign voltage reported. When its source is found and cleared, record how, and make a new card.</source>
        <translation>Abstand halten und die Fremdspannung melden lassen. Ist ihre Quelle gefunden und beseitigt, erfassen, wie, und eine neue Karte anlegen.</translation>
    </message>
    <message>
        <source>Keep away from overhead power</source>
        <translation>Abstand zu Freileitungen</translation>
    </message>
    <message>
        <source>Keep the &amp;change</source>
        <translation>Änderung s&amp;peichern</translation>
    </message>
    <message>
        <source>Keep the &amp;change of “%1”</source>
        <translation>Änderung von „%1“ s&amp;peichern</translation>
    </message>
    <message>
        <source>Keep the approach distances to exposed power lines with your body and with anything that conducts and that you hold, carry or raise.</source>
        <translation>Die Schutzabstände zu blanken Starkstromleitungen einhalten, mit dem Körper und mit allem Leitenden, das man hält, trägt oder hebt.</translation>
    </message>
    <message>
        <source>Keep this board</source>
        <translation>Diese Tafel speichern</translation>
    </message>
    <message>
        <source>Keep this card with the terminal equipment.</source>
        <translation>Bewahren Sie diese Karte beim Endgerät auf.</translation>
    </message>
    <message>
        <source>Keep this certificate. Whoever issued it can tell at any time whether it is genuine and still stands: give the number %1 and the code %2. The square on page 1 says what is certified, signed; anybody can check the signature who has the issuer's public key. The file of this certificate holds its record; the code is the beginning of the record's SHA-256:</source>
        <translation>Bewahren Sie dieses Zertifikat auf. Der Aussteller kann jederzeit sagen, ob es echt ist und noch gilt: Nennen Sie die Nummer %1 und den Code %2. Das Quadrat auf Seite 1 enthält unterschrieben, was bescheinigt wird; jeder, der den öffentlichen Schlüssel des Ausstellers hat, kann die Unterschrift prüfen. Die Datei dieses Zertifikats enthält seinen Datensatz; der Code ist der Anfang des SHA-256 des Datensatzes:</translation>
    </message>
    <message>
        <source>Key</source>
        <translation>Kürzel</translation>
    </message>
    <message>
        <source>Key of station %1: %2. Endorsed by the issuer's key: %3.</source>
        <translation>Schlüssel der Station %1: %2. Beglaubigt mit dem Schlüssel des Ausstellers: %3.</translation>
    </message>
    <message>
        <source>Key of this station</source>
        <translation>Schlüssel dieser Station</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Tastenkürzel</translation>
    </message>
    <message>
        <source>Keys (*.txt)</source>
        <translation>Schlüssel (*.txt)</translation>
    </message>
    <message>
        <source>Keys (*.txt);;All files (*)</source>
        <translation>Schlüssel (*.txt);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Kind of line</source>
        <translation>Leitungsart</translation>
    </message>
    <message>
        <source>L&amp;anguage</source>
        <translation>&amp;Sprache</translation>
    </message>
    <message>
        <source>LATE</source>
        <translation>ÜBERFÄLLIG</translation>
    </message>
    <message>
        <source>LATE, due %1</source>
        <translation>ÜBERFÄLLIG seit %1</translation>
    </message>
    <message>
        <source>Ladders and roofs</source>
        <translation>Leitern und Dächer</translation>
    </message>
    <message>
        <source>Last entry %1</source>
        <translation>Letzter Eintrag %1</translation>
    </message>
    <message>
        <source>Last entry %1 by %2</source>
        <translation>Letzter Eintrag %1 durch %2</translation>
    </message>
    <message>
        <source>Last events</source>
        <translation>Letzte Ereignisse</translation>
    </message>
    <message>
        <source>Last order</source>
        <translation>Zuletzt in</translation>
    </message>
    <message>
        <source>Late</source>
        <translation>Verspätet</translation>
    </message>
    <message>
        <source>Late, share</source>
        <translation>Verspätet, Anteil</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Später</translation>
    </message>
    <message>
        <source>Layer %1 at S/T down</source>
        <translation>Schicht %1 an S/T nicht aktiv</translation>
    </message>
    <message>
        <source>Layer %1 at S/T up</source>
        <translation>Schicht %1 an S/T aktiv</translation>
    </message>
    <message>
        <source>Layer %1 at U down</source>
        <translation>Schicht %1 an U nicht aktiv</translation>
    </message>
    <message>
        <source>Layer %1 at U up</source>
        <translation>Schicht %1 an U aktiv</translation>
    </message>
    <message>
        <source>Layer %1 of terminal %2 down</source>
        <translation>Schicht %1, Endgerät %2, nicht aktiv</translation>
    </message>
    <message>
        <source>Layer %1 of terminal %2 up</source>
        <translation>Schicht %1, Endgerät %2, aktiv</translation>
    </message>
    <message>
        <source>Layer 1</source>
        <translation>Schicht 1</translation>
    </message>
    <message>
        <source>Layer 1 at S/T</source>
        <translation>Schicht 1 an S/T</translation>
    </message>
    <message>
        <source>Layer 1 at U</source>
        <translation>Schicht 1 an U</translation>
    </message>
    <message>
        <source>Layer 2</source>
        <translation>Schicht 2</translation>
    </message>
    <message>
        <source>Layer 2 of %1</source>
        <translation>Schicht 2, %1</translation>
    </message>
    <message>
        <source>Layer 2 of the terminal, then noise on the loop.</source>
        <translation>Schicht 2 des Endgeräts, dann Geräusch auf der Anschlussleitung.</translation>
    </message>
    <message>
        <source>Layer 3</source>
        <translation>Schicht 3</translation>
    </message>
    <message>
        <source>Layer 3 of %1</source>
        <translation>Schicht 3, %1</translation>
    </message>
    <message>
        <source>Layer record</source>
        <translation>Schichtzustand</translation>
    </message>
    <message>
        <source>Layers</source>
        <translation>Schichten</translation>
    </message>
    <message>
        <source>Layers 1 and 2 again, from the U interface upwards.</source>
        <translation>Schicht 1 und 2 noch einmal, von der U-Schnittstelle aufwärts.</translation>
    </message>
    <message>
        <source>Layers: %1 down</source>
        <translation>Schichten: %1 nicht aktiv</translation>
    </message>
    <message>
        <source>Layers: %1 up</source>
        <translation>Schichten: %1 aktiv</translation>
    </message>
    <message>
        <source>Layers: %1 up, %2 down</source>
        <translation>Schichten: %1 aktiv, %2 nicht aktiv</translation>
    </message>
    <message>
        <source>Leave the pair alone until the foreign voltage is cleared.</source>
        <translation>Die Doppelader nicht anfassen, bis die Fremdspannung beseitigt ist.</translation>
    </message>
    <message>
        <source>Leaving</source>
        <translation>Abfahrt</translation>
    </message>
    <message>
        <source>Left at</source>
        <translation>Verlassen um</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Length of a basic-rate loop with its taps</source>
        <translation>Länge einer Basisanschlussleitung mit ihren Stichleitungen</translation>
    </message>
    <message>
        <source>Length of a basic-rate loop with its taps, at most</source>
        <translation>Länge einer Basisanschlussleitung mit ihren Stichleitungen, höchstens</translation>
    </message>
    <message>
        <source>Length of element %1</source>
        <translation>Länge von Element %1</translation>
    </message>
    <message>
        <source>Length of the error-rate run</source>
        <translation>Dauer des Bitfehler-Messlaufs</translation>
    </message>
    <message>
        <source>Length of the error-rate run, at least</source>
        <translation>Dauer des Bitfehler-Messlaufs, mindestens</translation>
    </message>
    <message>
        <source>Length of the run</source>
        <translation>Dauer des Messlaufs</translation>
    </message>
    <message>
        <source>Length, %1</source>
        <translation>Länge, %1</translation>
    </message>
    <message>
        <source>Let both sign, look at it, issue it.</source>
        <translation>Beide unterschreiben lassen, ansehen, ausstellen.</translation>
    </message>
    <message>
        <source>Life</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Grenzwert</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Grenzwerte</translation>
    </message>
    <message>
        <source>Limits from: %1</source>
        <translation>Grenzwerte aus: %1</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Leitung</translation>
    </message>
    <message>
        <source>Line certificate</source>
        <translation>Zertifikat des Anschlusses</translation>
    </message>
    <message>
        <source>Line certificate %1, continued</source>
        <translation>Zertifikat des Anschlusses %1, Fortsetzung</translation>
    </message>
    <message>
        <source>Lines at one premises</source>
        <translation>Anschlüsse eines Standorts</translation>
    </message>
    <message>
        <source>Lines at one premises, continued</source>
        <translation>Anschlüsse eines Standorts, Fortsetzung</translation>
    </message>
    <message>
        <source>Lines of the set</source>
        <translation>Anschlüsse des Satzes</translation>
    </message>
    <message>
        <source>Lists (*.csv *.txt);;All files (*)</source>
        <translation>Listen (*.csv *.txt);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Load coil</source>
        <translation>Pupinspule</translation>
    </message>
    <message>
        <source>Load coils</source>
        <translation>Pupinspulen</translation>
    </message>
    <message>
        <source>Load coils due every %1: the farthest off is %2 % away, at most %3 %</source>
        <translation>Pupinspulen alle %1 vorgesehen: größte Abweichung %2 %, höchstens %3 %</translation>
    </message>
    <message>
        <source>Load coils on a basic-rate loop</source>
        <translation>Pupinspulen auf einer Basisanschlussleitung</translation>
    </message>
    <message>
        <source>Load coils on a basic-rate loop, at most</source>
        <translation>Pupinspulen auf einer Basisanschlussleitung, höchstens</translation>
    </message>
    <message>
        <source>Load coils: %1 on %2, as the rule asks beyond %3</source>
        <translation>Pupinspulen: %1 auf %2, wie es die Regel über %3 verlangt</translation>
    </message>
    <message>
        <source>Load coils: %1 on %2, as the rule asks up to %3</source>
        <translation>Pupinspulen: %1 auf %2, wie es die Regel bis %3 verlangt</translation>
    </message>
    <message>
        <source>Load coils: %1 on %2; the rule asks for none up to %3</source>
        <translation>Pupinspulen: %1 auf %2; die Regel verlangt keine bis %3</translation>
    </message>
    <message>
        <source>Load coils: %1 on %2; the rule asks for some beyond %3</source>
        <translation>Pupinspulen: %1 auf %2; die Regel verlangt welche über %3</translation>
    </message>
    <message>
        <source>Load coils: %1; a load coil stops basic rate altogether</source>
        <translation>Pupinspulen: %1; schon eine macht den Basisanschluss unmöglich</translation>
    </message>
    <message>
        <source>Load what columns stand for</source>
        <translation>Spaltenzuordnung laden</translation>
    </message>
    <message>
        <source>Load…</source>
        <translation>Laden …</translation>
    </message>
    <message>
        <source>Log of station %1 at event %2: %3</source>
        <translation>Protokoll der Station %1 beim Ereignis %2: %3</translation>
    </message>
    <message>
        <source>Login</source>
        <translation>Anmeldung</translation>
    </message>
    <message>
        <source>Look among completed orders too</source>
        <translation>Auch abgeschlossene Aufträge durchsuchen</translation>
    </message>
    <message>
        <source>Look around in the demo, import files (serving offices first, then orders), or make your first office by hand.</source>
        <translation>In der Demo umsehen, Dateien einlesen (zuerst Vermittlungsstellen, dann Aufträge) oder die erste Vermittlungsstelle von Hand anlegen.</translation>
    </message>
    <message>
        <source>Look at contacts and wiring and say what was done; then make the detector check again, and after it the run.</source>
        <translation>Kontakte und Verdrahtung ansehen und angeben, was getan wurde; dann die Erkennungsprüfung wiederholen, danach den Messlauf.</translation>
    </message>
    <message>
        <source>Look for a cross with a working pair or wet insulation; clear it before the line is handed over.</source>
        <translation>Nach Berührung mit einer beschalteten Doppelader oder nasser Isolation suchen; vor der Übergabe des Anschlusses beseitigen.</translation>
    </message>
    <message>
        <source>Look for power contact, a missing bond or an open shield; clear it before the line is handed over.</source>
        <translation>Nach Starkstromberührung, fehlendem Potentialausgleich oder offenem Schirm suchen; vor der Übergabe des Anschlusses beseitigen.</translation>
    </message>
    <message>
        <source>Look through all records</source>
        <translation>Ganzen Datenbestand durchsehen</translation>
    </message>
    <message>
        <source>Looks for every number, SPID and pair that two circuits hold, and for open orders whose identifiers are in error. Enter opens the circuit of a finding.</source>
        <translation>Sucht jede Rufnummer, SPID und Doppelader, die zwei Anschlüsse belegen, und offene Aufträge mit fehlerhaften Kennungen. Eingabe öffnet den Anschluss eines Befunds.</translation>
    </message>
    <message>
        <source>Loop</source>
        <translation>Anschlussleitung</translation>
    </message>
    <message>
        <source>Loop current</source>
        <translation>Schleifenstrom</translation>
    </message>
    <message>
        <source>Loop current, good from</source>
        <translation>Schleifenstrom, gut ab</translation>
    </message>
    <message>
        <source>Loop current, good up to</source>
        <translation>Schleifenstrom, gut bis</translation>
    </message>
    <message>
        <source>Loop current, marginal from</source>
        <translation>Schleifenstrom, grenzwertig ab</translation>
    </message>
    <message>
        <source>Loop current, marginal up to</source>
        <translation>Schleifenstrom, grenzwertig bis</translation>
    </message>
    <message>
        <source>Loop reading</source>
        <translation>Messwert der Anschlussleitung</translation>
    </message>
    <message>
        <source>Loop: %1</source>
        <translation>Anschlussleitung: %1</translation>
    </message>
    <message>
        <source>Loop: make-up and prediction</source>
        <translation>Anschlussleitung: Aufbau und Vorausberechnung</translation>
    </message>
    <message>
        <source>Loopback at the NT</source>
        <translation>Prüfschleife am NT</translation>
    </message>
    <message>
        <source>Loops</source>
        <translation>Leitungen</translation>
    </message>
    <message>
        <source>Loops of an office</source>
        <translation>Anschlussleitungen einer Vermittlungsstelle</translation>
    </message>
    <message>
        <source>Loops of the office</source>
        <translation>Anschlussleitungen der Vermittlungsstelle</translation>
    </message>
    <message>
        <source>Loopwright</source>
        <translation>Loopwright</translation>
    </message>
    <message>
        <source>Loss</source>
        <translation>Dämpfung</translation>
    </message>
    <message>
        <source>Loss and noise of the pair, then its joints and the drop.</source>
        <translation>Dämpfung und Geräusch der Doppelader, dann ihre Spleißstellen und die Hauszuführung.</translation>
    </message>
    <message>
        <source>Loss at %1</source>
        <translation>Dämpfung bei %1</translation>
    </message>
    <message>
        <source>Loss at 1004 Hz</source>
        <translation>Dämpfung bei 1004 Hz</translation>
    </message>
    <message>
        <source>Loss hot, dB</source>
        <translation>Dämpfung warm, dB</translation>
    </message>
    <message>
        <source>Loss measured at</source>
        <translation>Dämpfung gemessen bei</translation>
    </message>
    <message>
        <source>Loss of a basic-rate loop at 40 kHz between 135 ohm</source>
        <translation>Dämpfung einer Basisanschlussleitung bei 40 kHz, Abschluss 135 Ohm</translation>
    </message>
    <message>
        <source>Loss of a basic-rate loop at 40 kHz between 135 ohm, at most</source>
        <translation>Dämpfung einer Basisanschlussleitung bei 40 kHz, Abschluss 135 Ohm, höchstens</translation>
    </message>
    <message>
        <source>Loss over frequency</source>
        <translation>Dämpfung über der Frequenz</translation>
    </message>
    <message>
        <source>Loss, dB</source>
        <translation>Dämpfung, dB</translation>
    </message>
    <message>
        <source>Losses of pattern synchronisation in the run</source>
        <translation>Verluste des Mustergleichlaufs im Messlauf</translation>
    </message>
    <message>
        <source>Losses of pattern synchronisation in the run, at most</source>
        <translation>Verluste des Mustergleichlaufs im Messlauf, höchstens</translation>
    </message>
    <message>
        <source>Losses of sync</source>
        <translation>Gleichlaufverluste</translation>
    </message>
    <message>
        <source>Losses of synchronisation</source>
        <translation>Synchronverluste</translation>
    </message>
    <message>
        <source>Made %1</source>
        <translation>Erstellt %1</translation>
    </message>
    <message>
        <source>Make SPIDs anew that hold the old code</source>
        <translation>SPIDs mit der alten Vorwahl neu bilden</translation>
    </message>
    <message>
        <source>Make a %1 and record it.</source>
        <translation>Durchführen und erfassen: %1.</translation>
    </message>
    <message>
        <source>Make a new safety card before the pair is touched.</source>
        <translation>Eine neue Sicherheitskarte anlegen, bevor die Doppelader berührt wird.</translation>
    </message>
    <message>
        <source>Make a run of %1 minutes on %2 without a break.</source>
        <translation>Einen Messlauf von %1 Minuten ohne Unterbrechung auf %2 machen.</translation>
    </message>
    <message>
        <source>Make of the NT</source>
        <translation>Fabrikat des NT</translation>
    </message>
    <message>
        <source>Make room on the disk, or see to it that you may write in this folder, and try again.</source>
        <translation>Platz auf dem Datenträger schaffen oder für Schreibrechte in diesem Ordner sorgen, dann erneut versuchen.</translation>
    </message>
    <message>
        <source>Make the detector check again, then the run.</source>
        <translation>Die Erkennungsprüfung wiederholen, dann den Messlauf.</translation>
    </message>
    <message>
        <source>Make the detector check: quiet, inject, see, clear; then the run.</source>
        <translation>Die Erkennungsprüfung machen: Ruhe abwarten, einfügen, sehen, zurücksetzen; dann den Messlauf.</translation>
    </message>
    <message>
        <source>Make the first office…</source>
        <translation>Erste Vermittlungsstelle anlegen…</translation>
    </message>
    <message>
        <source>Make the office</source>
        <translation>Vermittlungsstelle anlegen</translation>
    </message>
    <message>
        <source>Make the safety card before the pair is touched.</source>
        <translation>Die Sicherheitskarte anlegen, bevor die Doppelader berührt wird.</translation>
    </message>
    <message>
        <source>Make-up</source>
        <translation>Leitungsaufbau</translation>
    </message>
    <message>
        <source>Make-up (*.csv *.json)</source>
        <translation>Leitungsaufbau (*.csv *.json)</translation>
    </message>
    <message>
        <source>Make-up of</source>
        <translation>Aufbau von</translation>
    </message>
    <message>
        <source>Make-up of a pair</source>
        <translation>Aufbau einer Doppelader</translation>
    </message>
    <message>
        <source>Make-up of the pair</source>
        <translation>Aufbau der Doppelader</translation>
    </message>
    <message>
        <source>Mandatory information element missing</source>
        <translation>Vorgeschriebenes Informationselement fehlt</translation>
    </message>
    <message>
        <source>Manholes and vaults</source>
        <translation>Schächte und Kabelkeller</translation>
    </message>
    <message>
        <source>Many at once</source>
        <translation>Viele auf einmal</translation>
    </message>
    <message>
        <source>Marginal: %1</source>
        <translation>Grenzwertig: %1</translation>
    </message>
    <message>
        <source>Means</source>
        <translation>Bedeutet</translation>
    </message>
    <message>
        <source>Measure again with a registered instrument within its calibration, or record its later calibration.</source>
        <translation>Erneut mit einem gültig kalibrierten Messgerät aus dem Register messen oder seine spätere Kalibrierung erfassen.</translation>
    </message>
    <message>
        <source>Measure again with a registered instrument within its calibration: %1.</source>
        <translation>Erneut mit einem gültig kalibrierten Messgerät aus dem Register messen: %1.</translation>
    </message>
    <message>
        <source>Measure again with the customer's wiring unplugged: what stays is of the pair or the office, what goes is behind the interface.</source>
        <translation>Ohne die Verkabelung des Kunden noch einmal messen: was bleibt, kommt von Doppelader oder Vermittlungsstelle, was verschwindet, liegt hinter der Schnittstelle.</translation>
    </message>
    <message>
        <source>Measure alternating and direct voltage of each wire to ground and between the wires, for power contact and induced voltage. Above the limit, or where the office does not explain what you read: stop, move away, report. A few volts on a dead pair are a trouble to clear, not a hazard.</source>
        <translation>Wechsel- und Gleichspannung jeder Ader gegen Erde und zwischen den Adern messen, wegen Starkstromberührung und Beeinflussung. Über dem Grenzwert, oder wo die Vermittlungsstelle den Messwert nicht erklärt: aufhören, weggehen, melden. Wenige Volt auf einer toten Doppelader sind ein Fehler, keine Gefahr.</translation>
    </message>
    <message>
        <source>Measure before touching</source>
        <translation>Messen vor dem Berühren</translation>
    </message>
    <message>
        <source>Measure the loss at %1, enter the make-up, or make the error-rate run.</source>
        <translation>Die Dämpfung bei %1 messen, den Leitungsaufbau eingeben oder den Messlauf machen.</translation>
    </message>
    <message>
        <source>Measure with it</source>
        <translation>Damit messen</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>Measured on the pair</source>
        <translation>An der Doppelader gemessen</translation>
    </message>
    <message>
        <source>Measured with</source>
        <translation>Gemessen mit</translation>
    </message>
    <message>
        <source>Mend what the first open criterion names and record it again; a supervisor may accept with an exception, by name and with a reason.</source>
        <translation>Beheben, was das erste offene Kriterium nennt, und erneut erfassen; die Aufsicht kann mit einer Ausnahme abnehmen, mit Namen und Grund.</translation>
    </message>
    <message>
        <source>Menu key</source>
        <translation>Menütaste</translation>
    </message>
    <message>
        <source>Message not compatible with call state</source>
        <translation>Nachricht passt nicht zum Verbindungszustand</translation>
    </message>
    <message>
        <source>Message not compatible with state, or unknown</source>
        <translation>Nachricht passt nicht zum Zustand oder ist unbekannt</translation>
    </message>
    <message>
        <source>Message type non-existent or not implemented</source>
        <translation>Nachrichtentyp existiert nicht oder ist nicht implementiert</translation>
    </message>
    <message>
        <source>Message with unrecognised parameter discarded</source>
        <translation>Nachricht mit unbekanntem Parameter verworfen</translation>
    </message>
    <message>
        <source>Misdialled trunk prefix</source>
        <translation>Falsch gewähltes Präfix</translation>
    </message>
    <message>
        <source>Mohm</source>
        <translation>MOhm</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Monat</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Weiteres</translation>
    </message>
    <message>
        <source>More errors were seen than were sent on purpose: the line makes errors.</source>
        <translation>Es wurden mehr Fehler gesehen als absichtlich eingefügt: die Leitung erzeugt Fehler.</translation>
    </message>
    <message>
        <source>Most likely %1: %2. It would give %3.</source>
        <translation>Am wahrscheinlichsten: %1 (%2). Das ergäbe: %3.</translation>
    </message>
    <message>
        <source>Move</source>
        <translation>Umzug</translation>
    </message>
    <message>
        <source>Move them</source>
        <translation>Umterminieren</translation>
    </message>
    <message>
        <source>Multipoint</source>
        <translation>Mehrgeräteanschluss</translation>
    </message>
    <message>
        <source>Must be there</source>
        <translation>Muss da sein</translation>
    </message>
    <message>
        <source>NEC article 800 (from memory); the local electrical code</source>
        <translation>NEC, Artikel 800 (aus dem Gedächtnis); die örtlichen Elektrovorschriften</translation>
    </message>
    <message>
        <source>NT</source>
        <translation>NT</translation>
    </message>
    <message>
        <source>NT supplied</source>
        <translation>NT gestellt</translation>
    </message>
    <message>
        <source>NT, terminal 4, …</source>
        <translation>NT, Endgerät 4, …</translation>
    </message>
    <message>
        <source>NT1, network termination</source>
        <translation>NT1, Netzabschluss</translation>
    </message>
    <message>
        <source>NT: supplied with the line</source>
        <translation>NT: mit dem Anschluss geliefert</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Name of an action</source>
        <translation>Name eines Befehls</translation>
    </message>
    <message>
        <source>Name of the board:</source>
        <translation>Name der Tafel:</translation>
    </message>
    <message>
        <source>Name the criteria that are excepted.</source>
        <translation>Bitte die Kriterien nennen, die ausgenommen werden.</translation>
    </message>
    <message>
        <source>Named by the search</source>
        <translation>Von der Suche genannt</translation>
    </message>
    <message>
        <source>Names what the readings are made with; they count only where it is registered and was calibrated on that day.</source>
        <translation>Nennt, womit gemessen wird; die Werte zählen nur, wenn es eingetragen und an diesem Tag kalibriert war.</translation>
    </message>
    <message>
        <source>National ISDN, generic SPID format</source>
        <translation>National ISDN, allgemeines SPID-Format</translation>
    </message>
    <message>
        <source>National ISDN-1 (NI-1), switch %1</source>
        <translation>National ISDN-1 (NI-1), Vermittlung %1</translation>
    </message>
    <message>
        <source>National ISDN-2</source>
        <translation>National ISDN-2</translation>
    </message>
    <message>
        <source>Nearly as likely: %1.</source>
        <translation>Fast so wahrscheinlich: %1.</translation>
    </message>
    <message>
        <source>Neighbours</source>
        <translation>Nachbarn</translation>
    </message>
    <message>
        <source>Network out of order</source>
        <translation>Netz gestört</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Neu</translation>
    </message>
    <message>
        <source>New area code</source>
        <translation>Neue Vorwahl</translation>
    </message>
    <message>
        <source>New here</source>
        <translation>Neu hier</translation>
    </message>
    <message>
        <source>New here, %1</source>
        <translation>Neu hier, %1</translation>
    </message>
    <message>
        <source>New key of the issuer, as the office reads it out</source>
        <translation>Neuer Schlüssel des Ausstellers, wie ihn das Büro vorliest</translation>
    </message>
    <message>
        <source>New line</source>
        <translation>Neuanschluss</translation>
    </message>
    <message>
        <source>New order</source>
        <translation>Neuer Auftrag</translation>
    </message>
    <message>
        <source>New orders of the office would take the new variant.</source>
        <translation>Neue Aufträge der Vermittlungsstelle bekämen die neue Variante.</translation>
    </message>
    <message>
        <source>New pair</source>
        <translation>Neue Doppelader</translation>
    </message>
    <message>
        <source>New protocol variant</source>
        <translation>Neue Protokollvariante</translation>
    </message>
    <message>
        <source>Newest</source>
        <translation>Aktuell</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Als Nächstes</translation>
    </message>
    <message>
        <source>Next here</source>
        <translation>Hier als Nächstes</translation>
    </message>
    <message>
        <source>Next on this job</source>
        <translation>Nächster Schritt</translation>
    </message>
    <message>
        <source>Next: %1</source>
        <translation>Als Nächstes: %1</translation>
    </message>
    <message>
        <source>Next: issue the certificate.</source>
        <translation>Als Nächstes: Zertifikat ausstellen.</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Nein</translation>
    </message>
    <message>
        <source>No %1 counts.</source>
        <translation>Erfasst, zählt aber nicht: %1.</translation>
    </message>
    <message>
        <source>No %1 was recorded.</source>
        <translation>Nicht erfasst: %1.</translation>
    </message>
    <message>
        <source>No North American number begins with 0: for another country type + and the country code</source>
        <translation>Keine nordamerikanische Rufnummer beginnt mit 0: für ein anderes Land + und die Landeskennzahl eingeben</translation>
    </message>
    <message>
        <source>No announced number was recorded.</source>
        <translation>Es wurde keine angesagte Rufnummer erfasst.</translation>
    </message>
    <message>
        <source>No answer from user (alerted)</source>
        <translation>Teilnehmer antwortet nicht (gerufen)</translation>
    </message>
    <message>
        <source>No bundle "%1" was brought from here.</source>
        <translation>Von hier wurde kein Bündel „%1“ zurückgebracht.</translation>
    </message>
    <message>
        <source>No bundle, or a damaged one: %1</source>
        <translation>Kein Bündel oder ein beschädigtes: %1</translation>
    </message>
    <message>
        <source>No call suspended</source>
        <translation>Keine Verbindung geparkt</translation>
    </message>
    <message>
        <source>No certificate</source>
        <translation>Kein Zertifikat</translation>
    </message>
    <message>
        <source>No circuit/channel available</source>
        <translation>Kein Kanal verfügbar</translation>
    </message>
    <message>
        <source>No column stands for %1.</source>
        <translation>Keine Spalte steht für %1.</translation>
    </message>
    <message>
        <source>No criterion open</source>
        <translation>Kein Kriterium offen</translation>
    </message>
    <message>
        <source>No dangerous voltage was read.</source>
        <translation>Es wurde keine gefährliche Spannung gemessen.</translation>
    </message>
    <message>
        <source>No day is fixed yet for the next visit.</source>
        <translation>Für den nächsten Besuch ist noch kein Tag bestimmt.</translation>
    </message>
    <message>
        <source>No detector check came before the run, over the same channels and path, with the same instrument, on the same visit.</source>
        <translation>Vor dem Messlauf gab es keine Erkennungsprüfung über dieselben Kanäle und denselben Weg, mit demselben Messgerät, beim selben Einsatz.</translation>
    </message>
    <message>
        <source>No detector check on %1 counts.</source>
        <translation>Auf %1 zählt keine Erkennungsprüfung.</translation>
    </message>
    <message>
        <source>No detector check was made on %1.</source>
        <translation>Auf %1 wurde keine Erkennungsprüfung gemacht.</translation>
    </message>
    <message>
        <source>No dial tone was heard when the receiver was lifted.</source>
        <translation>Beim Abheben war kein Wählton zu hören.</translation>
    </message>
    <message>
        <source>No emergency call is tested without arrangement with the emergency service.</source>
        <translation>Kein Notruf wird ohne Absprache mit der Notrufstelle geprüft.</translation>
    </message>
    <message>
        <source>No error was sent on purpose before the test.</source>
        <translation>Vor der Messung wurde kein Fehler absichtlich eingefügt.</translation>
    </message>
    <message>
        <source>No error was sent on purpose.</source>
        <translation>Es wurde kein Fehler absichtlich eingefügt.</translation>
    </message>
    <message>
        <source>No event of the van tells of a %1 that it brings.</source>
        <translation>Kein Ereignis des Wagens berichtet von einem Eintrag (%1), den er mitbringt.</translation>
    </message>
    <message>
        <source>No event of the van tells of issue %1 of certificate %2 that it brings.</source>
        <translation>Kein Ereignis des Wagens berichtet von der Ausfertigung %1 des Zertifikats %2, die er mitbringt.</translation>
    </message>
    <message>
        <source>No hazard is open.</source>
        <translation>Keine Gefahr ist offen.</translation>
    </message>
    <message>
        <source>No identifier is in error; %1 to confirm with the provider.</source>
        <translation>Keine Kennung ist fehlerhaft; vom Anbieter zu bestätigen: %1.</translation>
    </message>
    <message>
        <source>No instrument is said yet.</source>
        <translation>Es ist noch kein Messgerät angegeben.</translation>
    </message>
    <message>
        <source>No job is due on this day.</source>
        <translation>An diesem Tag ist kein Einsatz fällig.</translation>
    </message>
    <message>
        <source>No job is open</source>
        <translation>Kein Auftrag ist geöffnet</translation>
    </message>
    <message>
        <source>No job was opened yet</source>
        <translation>Noch wurde kein Auftrag geöffnet</translation>
    </message>
    <message>
        <source>No limit set is in force on %1.</source>
        <translation>Am %1 ist kein Grenzwertsatz in Kraft.</translation>
    </message>
    <message>
        <source>No line at these premises can have a certificate. %1</source>
        <translation>Kein Anschluss dieses Standorts kann ein Zertifikat haben. %1</translation>
    </message>
    <message>
        <source>No line of this office is concerned.</source>
        <translation>Kein Anschluss dieser Vermittlungsstelle ist betroffen.</translation>
    </message>
    <message>
        <source>No new entries</source>
        <translation>Keine neuen Einträge</translation>
    </message>
    <message>
        <source>No office is registered yet</source>
        <translation>Noch keine Vermittlungsstelle registriert</translation>
    </message>
    <message>
        <source>No order holds a pair of %1.</source>
        <translation>Kein Auftrag belegt eine Doppelader von %1.</translation>
    </message>
    <message>
        <source>No order is behind %1</source>
        <translation>Kein Auftrag zu %1</translation>
    </message>
    <message>
        <source>No order is open</source>
        <translation>Kein Auftrag ist offen</translation>
    </message>
    <message>
        <source>No order is open.</source>
        <translation>Kein Auftrag ist offen.</translation>
    </message>
    <message>
        <source>No order is selected.</source>
        <translation>Kein Auftrag ist ausgewählt.</translation>
    </message>
    <message>
        <source>No order matches</source>
        <translation>Kein Auftrag passt</translation>
    </message>
    <message>
        <source>No order of the records belongs to this report on these days.</source>
        <translation>Kein Auftrag des Datenbestands gehört an diesen Tagen zu dieser Auswertung.</translation>
    </message>
    <message>
        <source>No orders yet</source>
        <translation>Noch keine Aufträge</translation>
    </message>
    <message>
        <source>No other order is open at these premises.</source>
        <translation>Auf diesem Grundstück ist kein anderer Auftrag offen.</translation>
    </message>
    <message>
        <source>No protocol variant is given and the office has none.</source>
        <translation>Es ist keine Protokollvariante angegeben, und die Vermittlungsstelle hat keine.</translation>
    </message>
    <message>
        <source>No reading above the stop limits at %1; still treat it as live.</source>
        <translation>Kein Messwert um %1 über den Stopp-Grenzwerten; trotzdem wie unter Spannung behandeln.</translation>
    </message>
    <message>
        <source>No reading above the stop limits; still treat it as live.</source>
        <translation>Kein Messwert über den Stopp-Grenzwerten; trotzdem wie unter Spannung behandeln.</translation>
    </message>
    <message>
        <source>No reading was above the stop limits on %1.</source>
        <translation>Kein Wert lag über den Stoppgrenzen am %1.</translation>
    </message>
    <message>
        <source>No reply came in time.</source>
        <translation>Es kam nicht rechtzeitig eine Antwort.</translation>
    </message>
    <message>
        <source>No reply came: layer 2 dropped, or noise on the wiring</source>
        <translation>Keine Antwort: Schicht 2 ausgefallen oder Geräusch auf der Verkabelung</translation>
    </message>
    <message>
        <source>No route to destination</source>
        <translation>Kein Weg zum Ziel</translation>
    </message>
    <message>
        <source>No route to specified transit network</source>
        <translation>Kein Weg zum angegebenen Transitnetz</translation>
    </message>
    <message>
        <source>No run goes on, and none waits to be recorded.</source>
        <translation>Kein Messlauf ist im Gang, und keiner wartet auf das Erfassen.</translation>
    </message>
    <message>
        <source>No run on %1 at %2 bit/s counts.</source>
        <translation>Auf %1 zählt kein Messlauf mit %2 bit/s.</translation>
    </message>
    <message>
        <source>No run on %1 at %2 bit/s was recorded.</source>
        <translation>Auf %1 wurde kein Messlauf mit %2 bit/s erfasst.</translation>
    </message>
    <message>
        <source>No safety card holds for this pair, this visit and this state of the feed.</source>
        <translation>Für diese Doppelader, diesen Einsatz und diesen Zustand der Speisung gilt keine Sicherheitskarte.</translation>
    </message>
    <message>
        <source>No safety card was made for this pair.</source>
        <translation>Für diese Doppelader wurde keine Sicherheitskarte angelegt.</translation>
    </message>
    <message>
        <source>No single error of the record explains what was measured: measure again, then look for a bad joint, the wrong pair, or several errors together.</source>
        <translation>Kein einzelner Fehler im Datenbestand erklärt das Gemessene: noch einmal messen, dann nach einer schlechten Verbindungsstelle, der falschen Doppelader oder mehreren Fehlern zugleich suchen.</translation>
    </message>
    <message>
        <source>No space left on device</source>
        <translation>Kein Platz mehr auf dem Datenträger</translation>
    </message>
    <message>
        <source>No station says otherwise of what is selected.</source>
        <translation>Zum Ausgewählten widerspricht keine Station.</translation>
    </message>
    <message>
        <source>No station says otherwise: nothing is to be settled.</source>
        <translation>Keine Station widerspricht: Nichts ist zu klären.</translation>
    </message>
    <message>
        <source>No such file or directory</source>
        <translation>Datei oder Verzeichnis nicht gefunden</translation>
    </message>
    <message>
        <source>No thunderstorm is near.</source>
        <translation>Kein Gewitter ist in der Nähe.</translation>
    </message>
    <message>
        <source>No user responding</source>
        <translation>Keine Reaktion vom Teilnehmer</translation>
    </message>
    <message>
        <source>No van is known yet; add it by the file with its key.</source>
        <translation>Noch ist kein Wagen bekannt; fügen Sie ihn mit der Datei seines Schlüssels hinzu.</translation>
    </message>
    <message>
        <source>No visit is going on.</source>
        <translation>Kein Einsatz ist im Gang.</translation>
    </message>
    <message>
        <source>No voltage from elsewhere is on the pair.</source>
        <translation>Auf der Doppelader liegt keine fremde Spannung.</translation>
    </message>
    <message>
        <source>No word is called so.</source>
        <translation>Kein Begriff heißt so.</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>Nobody any more</source>
        <translation>Niemand mehr</translation>
    </message>
    <message>
        <source>Nobody assigned</source>
        <translation>Niemand zugewiesen</translation>
    </message>
    <message>
        <source>Nobody has said yet that it is closed.</source>
        <translation>Noch hat niemand gesagt, dass sie behoben ist.</translation>
    </message>
    <message>
        <source>Nobody here knows the key %1 of station %2; van add makes it known.</source>
        <translation>Den Schlüssel %1 der Station %2 kennt hier niemand; der Wagen muss erst aufgenommen werden.</translation>
    </message>
    <message>
        <source>Nobody is registered; import the people first (Records, Import a file)</source>
        <translation>Niemand ist registriert; zuerst die Personen einlesen (Datenbestand, Datei einlesen)</translation>
    </message>
    <message>
        <source>Nobody watched %1 of it while the program was not running: what the run proves, only the counters of the test set say.</source>
        <translation>Unbeobachtet, weil das Programm nicht lief: %1. Was der Messlauf beweist, sagen nur die Zähler des Prüfgeräts.</translation>
    </message>
    <message>
        <source>Noise between the two wires and ground that power lines near the cable cause.</source>
        <translation>Geräusch zwischen beiden Adern und Erde, das Starkstromleitungen nahe dem Kabel verursachen.</translation>
    </message>
    <message>
        <source>Noise between the two wires of a quiet line, weighted as the ear hears it.</source>
        <translation>Geräusch zwischen den Adern einer stillen Leitung, gewichtet, wie das Ohr es hört.</translation>
    </message>
    <message>
        <source>Non-existent closed user group</source>
        <translation>Geschlossene Benutzergruppe existiert nicht</translation>
    </message>
    <message>
        <source>Non-selected user clearing</source>
        <translation>Auslösung bei nicht ausgewähltem Teilnehmer</translation>
    </message>
    <message>
        <source>None of the selected orders is open.</source>
        <translation>Keiner der ausgewählten Aufträge ist offen.</translation>
    </message>
    <message>
        <source>None of them can go along.</source>
        <translation>Keiner davon kann mitgehen.</translation>
    </message>
    <message>
        <source>None of these has such a paper. %1</source>
        <translation>Keiner von diesen hat ein solches Papier. %1</translation>
    </message>
    <message>
        <source>None yet</source>
        <translation>Noch keine</translation>
    </message>
    <message>
        <source>Normal call clearing</source>
        <translation>Normale Auslösung</translation>
    </message>
    <message>
        <source>Normal on packet calls; otherwise pass over it</source>
        <translation>Bei Paketverbindungen normal; sonst übergehen</translation>
    </message>
    <message>
        <source>Normal when two terminals answer</source>
        <translation>Normal, wenn zwei Endgeräte annehmen</translation>
    </message>
    <message>
        <source>Normal, unspecified</source>
        <translation>Normal, nicht näher bestimmt</translation>
    </message>
    <message>
        <source>Not accepted</source>
        <translation>Nicht abgenommen</translation>
    </message>
    <message>
        <source>Not accepted: a criterion is not met.</source>
        <translation>Nicht abgenommen: Ein Kriterium ist nicht erfüllt.</translation>
    </message>
    <message>
        <source>Not complete yet</source>
        <translation>Noch nicht vollständig</translation>
    </message>
    <message>
        <source>Not every ordered service was shown to work in a call.</source>
        <translation>Nicht für jeden bestellten Dienst wurde durch einen Anruf nachgewiesen, dass er arbeitet.</translation>
    </message>
    <message>
        <source>Not every row of %1 could be taken as it is.</source>
        <translation>Nicht jede Zeile aus %1 ließ sich so aufnehmen, wie sie ist.</translation>
    </message>
    <message>
        <source>Not everything was taken in.</source>
        <translation>Nicht alles wurde übernommen.</translation>
    </message>
    <message>
        <source>Not known. %1</source>
        <translation>Unbekannt. %1</translation>
    </message>
    <message>
        <source>Not met</source>
        <translation>Nicht erfüllt</translation>
    </message>
    <message>
        <source>Not needed: %1</source>
        <translation>Nicht nötig: %1</translation>
    </message>
    <message>
        <source>Not signed by %1: signing makes a further issue of the same certificate.</source>
        <translation>Unterschrift fehlt: %1. Wird sie geleistet, entsteht eine weitere Ausfertigung desselben Zertifikats.</translation>
    </message>
    <message>
        <source>Not taken back: %1 %2</source>
        <translation>Nicht rückgängig gemacht: %1 %2</translation>
    </message>
    <message>
        <source>Not the generic format, legal all the same: confirm it with the provider%1</source>
        <translation>Nicht das allgemeine Format, aber zulässig: beim Anbieter bestätigen lassen%1</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Note: %1</source>
        <translation>Notiz: %1</translation>
    </message>
    <message>
        <source>Nothing at the premises before the office has answered.</source>
        <translation>Auf dem Grundstück nichts tun, bevor die Vermittlungsstelle geantwortet hat.</translation>
    </message>
    <message>
        <source>Nothing but 0 behind the 15th digit: a spreadsheet may have rounded it</source>
        <translation>Nach der 15. Stelle nur 0: eine Tabellenkalkulation hat vielleicht gerundet</translation>
    </message>
    <message>
        <source>Nothing is called so.</source>
        <translation>So heißt nichts.</translation>
    </message>
    <message>
        <source>Nothing is entered yet.</source>
        <translation>Noch nichts eingegeben.</translation>
    </message>
    <message>
        <source>Nothing is held twice, and no open order's identifiers are in error.</source>
        <translation>Nichts ist doppelt belegt, und kein offener Auftrag hat fehlerhafte Kennungen.</translation>
    </message>
    <message>
        <source>Nothing is known of the loop yet.</source>
        <translation>Über die Anschlussleitung ist noch nichts bekannt.</translation>
    </message>
    <message>
        <source>Nothing is left but to complete the order.</source>
        <translation>Es bleibt nur, den Auftrag abzuschließen.</translation>
    </message>
    <message>
        <source>Nothing of it is out. The file that was written is still there: do not give it to the van.</source>
        <translation>Nichts davon ist unterwegs. Die geschriebene Datei ist noch da: Geben Sie sie dem Wagen nicht mit.</translation>
    </message>
    <message>
        <source>Nothing that counts is known of the loop.</source>
        <translation>Über die Anschlussleitung ist nichts bekannt, was zählt.</translation>
    </message>
    <message>
        <source>Nothing to change: %1.</source>
        <translation>Nichts zu ändern: %1.</translation>
    </message>
    <message>
        <source>Nothing to count</source>
        <translation>Nichts zu zählen</translation>
    </message>
    <message>
        <source>Nothing to draw.</source>
        <translation>Nichts zu zeichnen.</translation>
    </message>
    <message>
        <source>Nothing was changed.</source>
        <translation>Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>Nothing was done that can be taken back.</source>
        <translation>Nichts wurde getan, was zurückgenommen werden kann.</translation>
    </message>
    <message>
        <source>Nothing was measured that could be compared.</source>
        <translation>Es wurde nichts gemessen, was sich vergleichen ließe.</translation>
    </message>
    <message>
        <source>Nothing was measured with an instrument.</source>
        <translation>Mit einem Messgerät wurde nichts gemessen.</translation>
    </message>
    <message>
        <source>Nothing was measured yet.</source>
        <translation>Es wurde noch nichts gemessen.</translation>
    </message>
    <message>
        <source>Nothing was recorded yet</source>
        <translation>Noch nichts eingetragen</translation>
    </message>
    <message>
        <source>Nothing was taken back.</source>
        <translation>Nichts wurde zurückgenommen.</translation>
    </message>
    <message>
        <source>Nothing went along.</source>
        <translation>Nichts wurde mitgegeben.</translation>
    </message>
    <message>
        <source>Nothing: information only</source>
        <translation>Nichts: nur zur Kenntnis</translation>
    </message>
    <message>
        <source>Nothing: somebody hung up</source>
        <translation>Nichts: jemand hat aufgelegt</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>Number %1</source>
        <translation>Rufnummer %1</translation>
    </message>
    <message>
        <source>Number %1 is in use on circuit %2.</source>
        <translation>Nummer %1 ist an Anschluss %2 vergeben.</translation>
    </message>
    <message>
        <source>Number and code belong together; hold the paper beside what was certified, for its pages were not seen.</source>
        <translation>Nummer und Code gehören zusammen; bitte das Papier neben das halten, was bescheinigt wurde, denn seine Seiten wurden nicht gesehen.</translation>
    </message>
    <message>
        <source>Number changed</source>
        <translation>Rufnummer geändert</translation>
    </message>
    <message>
        <source>Number range</source>
        <translation>Rufnummernbereich</translation>
    </message>
    <message>
        <source>Number that the loopback calls back</source>
        <translation>Rückrufnummer der Prüfschleife</translation>
    </message>
    <message>
        <source>Numbers</source>
        <translation>Rufnummern</translation>
    </message>
    <message>
        <source>Numbers and line, as tested</source>
        <translation>Rufnummern und Anschluss, wie geprüft</translation>
    </message>
    <message>
        <source>Numbers, SPIDs and pairs that are held twice</source>
        <translation>Rufnummern, SPIDs und Doppeladern, die doppelt vergeben sind</translation>
    </message>
    <message>
        <source>OPEN</source>
        <translation>OFFEN</translation>
    </message>
    <message>
        <source>OUT OF SYNC — S when it is back</source>
        <translation>KEIN GLEICHLAUF – S, wenn er wieder da ist</translation>
    </message>
    <message>
        <source>Of %1 pairs no make-up is recorded.</source>
        <translation>Doppeladern ohne erfassten Leitungsaufbau: %1.</translation>
    </message>
    <message>
        <source>Of 1 pair no make-up is recorded.</source>
        <translation>Doppeladern ohne erfassten Leitungsaufbau: 1.</translation>
    </message>
    <message>
        <source>Of certificates, cards, lists and reports.</source>
        <translation>Von Zertifikaten, Karten, Listen und Auswertungen.</translation>
    </message>
    <message>
        <source>Of the %1 points that this line was checked for, %2</source>
        <translation>Von den %1 Punkten, auf die dieser Anschluss geprüft wurde, %2</translation>
    </message>
    <message>
        <source>Office</source>
        <translation>VSt</translation>
    </message>
    <message>
        <source>Office %1 from %2 to %3</source>
        <translation>Vermittlungsstelle %1 von %2 zu %3</translation>
    </message>
    <message>
        <source>Office %1 was changed since then. Nothing was taken back.</source>
        <translation>Die Vermittlungsstelle %1 wurde seither geändert. Nichts wurde zurückgenommen.</translation>
    </message>
    <message>
        <source>Office %1 went from %2 to %3</source>
        <translation>Vermittlungsstelle %1 umgestellt von %2 auf %3</translation>
    </message>
    <message>
        <source>Office code</source>
        <translation>Amtskennzahl</translation>
    </message>
    <message>
        <source>Office code %1 %2: confirm it with the provider</source>
        <translation>Amtskennzahl %1 %2: beim Anbieter bestätigen lassen</translation>
    </message>
    <message>
        <source>Office code %1 (%2) cannot be, it begins with 2 to 9</source>
        <translation>Amtskennzahl %1 (%2) ist nicht möglich, sie beginnt mit 2 bis 9</translation>
    </message>
    <message>
        <source>Office code %1 (%2) cannot be, it is a service number</source>
        <translation>Amtskennzahl %1 (%2) ist nicht möglich: eine Sondernummer</translation>
    </message>
    <message>
        <source>Office says</source>
        <translation>Die Dienststelle sagt</translation>
    </message>
    <message>
        <source>Offices come from a file: Import, then a CSV with the columns office, name and protocol_variant.</source>
        <translation>Vermittlungsstellen kommen aus einer Datei: Einlesen, dann eine CSV mit den Spalten office, name und protocol_variant.</translation>
    </message>
    <message>
        <source>Offices, people, instruments, limits</source>
        <translation>Vermittlungsstellen, Personen, Messgeräte, Grenzwerte</translation>
    </message>
    <message>
        <source>Old</source>
        <translation>Alt</translation>
    </message>
    <message>
        <source>Old area code</source>
        <translation>Alte Vorwahl</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Am</translation>
    </message>
    <message>
        <source>On %1 your order was handed on to: %2</source>
        <translation>Am %1 wurde Ihr Auftrag weitergegeben an: %2</translation>
    </message>
    <message>
        <source>On a server the login takes the place of a PIN: change its password there.</source>
        <translation>Auf einem Server steht die Anmeldung an der Stelle einer PIN: Ändern Sie dort ihr Passwort.</translation>
    </message>
    <message>
        <source>On another pair at these premises: %1 Read %2 for order %3.</source>
        <translation>An einer anderen Doppelader dieses Grundstücks: %1 Gemessen am %2 für Auftrag %3.</translation>
    </message>
    <message>
        <source>On hold, waits on %1: %2.</source>
        <translation>Angehalten, wartet auf: %1 – %2.</translation>
    </message>
    <message>
        <source>On one</source>
        <translation>In einem</translation>
    </message>
    <message>
        <source>On one visit</source>
        <translation>In einem Einsatz</translation>
    </message>
    <message>
        <source>On priority networks only: try again</source>
        <translation>Nur in Netzen mit Vorrang: noch einmal versuchen</translation>
    </message>
    <message>
        <source>On site since %1, by the arrival in order %2: one visit of all lines at these premises. The safety card is this pair's own.</source>
        <translation>Vor Ort seit %1, nach der Ankunft in Auftrag %2: ein Einsatz für alle Anschlüsse auf diesem Grundstück. Die Sicherheitskarte braucht jede Doppelader für sich.</translation>
    </message>
    <message>
        <source>On site since %1.</source>
        <translation>Vor Ort seit %1.</translation>
    </message>
    <message>
        <source>On site since %1. Say how the visit went when you leave; a visit without result counts too.</source>
        <translation>Vor Ort seit %1. Geben Sie beim Gehen an, wie der Einsatz verlief; auch ein Einsatz ohne Ergebnis zählt.</translation>
    </message>
    <message>
        <source>On site the line was put on pair %1, and the records have %2. Take an order of the type change in for that pair and complete it; then the trouble can be closed.</source>
        <translation>Vor Ort wurde der Anschluss auf die Doppelader %1 gelegt, und der Datenbestand hat %2. Bitte dafür einen Auftrag der Art Änderung aufnehmen und abschließen; dann lässt sich die Störung abschließen.</translation>
    </message>
    <message>
        <source>On-hook voltage</source>
        <translation>Ruhespannung</translation>
    </message>
    <message>
        <source>On-hook voltage, good from</source>
        <translation>Spannung bei aufgelegtem Hörer, gut ab</translation>
    </message>
    <message>
        <source>On-hook voltage, good up to</source>
        <translation>Spannung bei aufgelegtem Hörer, gut bis</translation>
    </message>
    <message>
        <source>On-hook voltage, marginal from</source>
        <translation>Spannung bei aufgelegtem Hörer, grenzwertig ab</translation>
    </message>
    <message>
        <source>One SPID, and both B channels are ordered: ask the provider for the second</source>
        <translation>Eine SPID, aber beide B-Kanäle sind bestellt: beim Anbieter nach der zweiten fragen</translation>
    </message>
    <message>
        <source>One SPID, taken apart</source>
        <translation>Eine SPID, zerlegt</translation>
    </message>
    <message>
        <source>One circuit with its whole history</source>
        <translation>Ein Anschluss mit seinem ganzen Verlauf</translation>
    </message>
    <message>
        <source>One entry dated %1 was recorded on %2.</source>
        <translation>Ein Eintrag vom %1 wurde am %2 aufgenommen.</translation>
    </message>
    <message>
        <source>One installer at one premises from arriving to leaving; two lines there share it, and never the safety card.</source>
        <translation>Ein Monteur auf einem Grundstück von der Ankunft bis zum Gehen; zwei Anschlüsse dort teilen ihn, nie die Sicherheitskarte.</translation>
    </message>
    <message>
        <source>One line, with its certificate.</source>
        <translation>Ein Anschluss mit seinem Zertifikat.</translation>
    </message>
    <message>
        <source>One of the two channels of a basic-rate line that carry a call each, voice or data, at 64 kbit/s.</source>
        <translation>Einer der beiden Kanäle eines Basisanschlusses für je einen Anruf, Sprache oder Daten, mit 64 kbit/s.</translation>
    </message>
    <message>
        <source>One order from its first step to the certificate</source>
        <translation>Ein Auftrag vom ersten Schritt bis zum Zertifikat</translation>
    </message>
    <message>
        <source>One refused row refuses the file</source>
        <translation>Bei einer abgelehnten Zeile ganze Datei ablehnen</translation>
    </message>
    <message>
        <source>One set of records with a key of its own: that of a van, or that of the desk, which is called the office where vans are spoken of.</source>
        <translation>Ein Datenbestand mit eigenem Schlüssel: der eines Wagens oder der des Arbeitsplatzes, der Büro heißt, wo von Wagen die Rede ist.</translation>
    </message>
    <message>
        <source>Only not tried yet</source>
        <translation>Nur noch nicht versucht</translation>
    </message>
    <message>
        <source>Only paper is left</source>
        <translation>Nur noch Papier</translation>
    </message>
    <message>
        <source>Only restricted digital bearer available</source>
        <translation>Nur eingeschränkter digitaler Übermittlungsdienst verfügbar</translation>
    </message>
    <message>
        <source>Only the records of who issued it can tell whether it still stands.</source>
        <translation>Nur der Datenbestand dessen, der es ausgestellt hat, kann sagen, ob es noch gilt.</translation>
    </message>
    <message>
        <source>Only what this installer has to do</source>
        <translation>Nur was dieser Monteur zu tun hat</translation>
    </message>
    <message>
        <source>Only what this station recorded counts: %1. Set aside: %2.</source>
        <translation>Nur was diese Station festgehalten hat, zählt: %1. Zurückgestellt: %2.</translation>
    </message>
    <message>
        <source>Only what was recorded in the office counts: %1. Set aside: %2.</source>
        <translation>Nur was im Büro festgehalten wurde, zählt: %1. Zurückgestellt: %2.</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Offen</translation>
    </message>
    <message>
        <source>Open a file…</source>
        <translation>Datei öffnen …</translation>
    </message>
    <message>
        <source>Open for %1 days.</source>
        <translation>Seit %1 Tagen offen.</translation>
    </message>
    <message>
        <source>Open for 1 day.</source>
        <translation>Seit 1 Tag offen.</translation>
    </message>
    <message>
        <source>Open ones only</source>
        <translation>Nur offene</translation>
    </message>
    <message>
        <source>Open orders</source>
        <translation>Offene Aufträge</translation>
    </message>
    <message>
        <source>Open orders by the day they are due, under the first criterion that is open: not met, or still to be shown. The share is of the orders under the same key.</source>
        <translation>Offene Aufträge nach dem Tag, an dem sie fällig sind, unter dem ersten offenen Kriterium: nicht erfüllt oder noch nachzuweisen. Der Anteil bezieht sich auf die Aufträge unter demselben Schlüssel.</translation>
    </message>
    <message>
        <source>Open orders, the days since each was taken in, and how many are late.</source>
        <translation>Offene Aufträge, die Tage seit der Annahme, und wie viele verspätet sind.</translation>
    </message>
    <message>
        <source>Open other records</source>
        <translation>Anderen Datenbestand öffnen</translation>
    </message>
    <message>
        <source>Open since today.</source>
        <translation>Seit heute offen.</translation>
    </message>
    <message>
        <source>Open the demo</source>
        <translation>Demo öffnen</translation>
    </message>
    <message>
        <source>Open the job</source>
        <translation>Auftrag öffnen</translation>
    </message>
    <message>
        <source>Open the order</source>
        <translation>Auftrag öffnen</translation>
    </message>
    <message>
        <source>Open the row</source>
        <translation>Zeile öffnen</translation>
    </message>
    <message>
        <source>Open the run (F8)</source>
        <translation>Messlauf öffnen (F8)</translation>
    </message>
    <message>
        <source>Open the trouble</source>
        <translation>Störung anlegen</translation>
    </message>
    <message>
        <source>Open them</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Open these records at every start</source>
        <translation>Diesen Datenbestand bei jedem Start öffnen</translation>
    </message>
    <message>
        <source>Open: nobody has said yet how it was closed.</source>
        <translation>Offen: noch hat niemand gesagt, wie sie behoben wurde.</translation>
    </message>
    <message>
        <source>Opened</source>
        <translation>Aufgenommen</translation>
    </message>
    <message>
        <source>Or by what stands on the paper</source>
        <translation>Oder nach dem, was auf dem Papier steht</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>Order %1</source>
        <translation>Auftrag %1</translation>
    </message>
    <message>
        <source>Order %1 gave it up for pair %2.</source>
        <translation>Auftrag %1 gab sie für die Doppelader %2 auf.</translation>
    </message>
    <message>
        <source>Order %1 is %2 already.</source>
        <translation>Auftrag %1 ist schon %2.</translation>
    </message>
    <message>
        <source>Order %1 is %2 and cannot be changed.</source>
        <translation>Auftrag %1 ist nicht mehr offen (%2) und kann nicht geändert werden.</translation>
    </message>
    <message>
        <source>Order %1 is %2 now.</source>
        <translation>Auftrag %1 ist jetzt %2.</translation>
    </message>
    <message>
        <source>Order %1 is %2%3</source>
        <translation>Auftrag %1 ist %2%3</translation>
    </message>
    <message>
        <source>Order %1 is %2: nothing is done for it.</source>
        <translation>Auftrag %1 ist %2: für ihn wird nichts getan.</translation>
    </message>
    <message>
        <source>Order %1 is a repair: close its trouble with what was found, what cleared it, and the cause.</source>
        <translation>Auftrag %1 ist eine Entstörung: bitte seine Störung abschließen, mit Befund, Abhilfe und Ursache.</translation>
    </message>
    <message>
        <source>Order %1 is changed.</source>
        <translation>Auftrag %1 ist geändert.</translation>
    </message>
    <message>
        <source>Order %1 is incomplete: %2</source>
        <translation>Auftrag %1 ist unvollständig: %2</translation>
    </message>
    <message>
        <source>Order %1 is no longer open.</source>
        <translation>Auftrag %1 ist nicht mehr offen.</translation>
    </message>
    <message>
        <source>Order %1 is no longer open: it is kept and decides nothing.</source>
        <translation>Auftrag %1 ist nicht mehr offen: Es bleibt erhalten und entscheidet nichts.</translation>
    </message>
    <message>
        <source>Order %1 is no longer open: its values stay.</source>
        <translation>Auftrag %1 ist nicht mehr offen: Seine Werte bleiben.</translation>
    </message>
    <message>
        <source>Order %1 is no repair.</source>
        <translation>Auftrag %1 ist keine Entstörung.</translation>
    </message>
    <message>
        <source>Order %1 is not accepted now%2</source>
        <translation>Auftrag %1 ist jetzt nicht abgenommen%2</translation>
    </message>
    <message>
        <source>Order %1 is not accepted%2</source>
        <translation>Auftrag %1 ist nicht abgenommen%2</translation>
    </message>
    <message>
        <source>Order %1 is not accepted. To read aloud, or to hand on.</source>
        <translation>Auftrag %1 ist nicht abgenommen. Zum Vorlesen oder Weitergeben.</translation>
    </message>
    <message>
        <source>Order %1 is not on hold.</source>
        <translation>Auftrag %1 ist nicht zurückgestellt.</translation>
    </message>
    <message>
        <source>Order %1 is not out at station %2.</source>
        <translation>Auftrag %1 ist nicht bei Station %2.</translation>
    </message>
    <message>
        <source>Order %1 is of circuit %2 here.</source>
        <translation>Auftrag %1 gehört hier zu Anschluss %2.</translation>
    </message>
    <message>
        <source>Order %1 is settled: %2.</source>
        <translation>Auftrag %1 ist geklärt: %2.</translation>
    </message>
    <message>
        <source>Order %1 is taken in and held.</source>
        <translation>Auftrag %1 ist aufgenommen, aber zurückgehalten.</translation>
    </message>
    <message>
        <source>Order %1 is taken in.</source>
        <translation>Auftrag %1 ist aufgenommen.</translation>
    </message>
    <message>
        <source>Order %1 is the office's: have it completed or cancelled there.</source>
        <translation>Auftrag %1 gehört dem Büro: Lassen Sie ihn dort abschließen oder stornieren.</translation>
    </message>
    <message>
        <source>Order %1 is there with other values.</source>
        <translation>Auftrag %1 ist mit anderen Werten da.</translation>
    </message>
    <message>
        <source>Order %1 is there, and held until its identifiers are mended.</source>
        <translation>Auftrag %1 ist schon da und wird zurückgehalten, bis seine Kennungen berichtigt sind.</translation>
    </message>
    <message>
        <source>Order %1 is with %2, where nobody will know of the change until it is home.</source>
        <translation>Auftrag %1 ist bei %2; dort weiß niemand von der Änderung, bis er zurück ist.</translation>
    </message>
    <message>
        <source>Order %1 is with station %2 since %3.</source>
        <translation>Auftrag %1 ist seit %3 bei Station %2.</translation>
    </message>
    <message>
        <source>Order %1 was cancelled.</source>
        <translation>Auftrag %1 wurde storniert.</translation>
    </message>
    <message>
        <source>Order %1 was changed again since then: its %2 is %3 now.</source>
        <translation>Auftrag %1 wurde seither wieder geändert: %2 ist jetzt %3.</translation>
    </message>
    <message>
        <source>Order %1 was taken along from this office, and is not in its records: an older copy of them is in use.</source>
        <translation>Auftrag %1 wurde aus diesem Büro mitgenommen und steht nicht in seinen Aufzeichnungen: Es ist eine ältere Kopie im Gebrauch.</translation>
    </message>
    <message>
        <source>Order %1, %2</source>
        <translation>Auftrag %1, %2</translation>
    </message>
    <message>
        <source>Order %1, circuit %2</source>
        <translation>Auftrag %1, Anschluss %2</translation>
    </message>
    <message>
        <source>Order %1, circuit %2, pair %3</source>
        <translation>Auftrag %1, Anschluss %2, Doppelader %3</translation>
    </message>
    <message>
        <source>Order %1.</source>
        <translation>Auftrag %1.</translation>
    </message>
    <message>
        <source>Order %1: %2</source>
        <translation>Auftrag %1: %2</translation>
    </message>
    <message>
        <source>Order cancelled: %1</source>
        <translation>Auftrag storniert: %1</translation>
    </message>
    <message>
        <source>Order completed</source>
        <translation>Auftrag abgeschlossen</translation>
    </message>
    <message>
        <source>Order form</source>
        <translation>Formular</translation>
    </message>
    <message>
        <source>Order number</source>
        <translation>Auftragsnummer</translation>
    </message>
    <message>
        <source>Order taken in: %1, due %2</source>
        <translation>Auftrag aufgenommen: %1, fällig %2</translation>
    </message>
    <message>
        <source>Order type</source>
        <translation>Auftragsart</translation>
    </message>
    <message>
        <source>Ordered</source>
        <translation>Bestellt</translation>
    </message>
    <message>
        <source>Orders</source>
        <translation>Aufträge</translation>
    </message>
    <message>
        <source>Orders behind %1</source>
        <translation>Aufträge zu %1</translation>
    </message>
    <message>
        <source>Orders behind %1: the first %2</source>
        <translation>Aufträge zu %1: die ersten %2</translation>
    </message>
    <message>
        <source>Orders behind the figure</source>
        <translation>Aufträge hinter der Zahl</translation>
    </message>
    <message>
        <source>Orders of %1</source>
        <translation>Aufträge von %1</translation>
    </message>
    <message>
        <source>Orders that were taken in here go along too. What the office has already adds nothing there.</source>
        <translation>Auch hier aufgenommene Aufträge gehen mit. Was das Büro schon hat, fügt dort nichts hinzu.</translation>
    </message>
    <message>
        <source>Orders, offices, people and instruments from a file</source>
        <translation>Aufträge, Vermittlungsstellen, Personen und Messgeräte aus einer Datei</translation>
    </message>
    <message>
        <source>Orders, records, runs, decisions, events and certificates in a folder, for whoever takes the circuit over</source>
        <translation>Aufträge, Aufzeichnungen, Messläufe, Entscheidungen, Ereignisse und Zertifikate in einem Ordner, für alle, die den Anschluss übernehmen</translation>
    </message>
    <message>
        <source>Ordinary analog line</source>
        <translation>gewöhnlicher Analoganschluss</translation>
    </message>
    <message>
        <source>Others had rights to the file of the records; now its owner alone has.</source>
        <translation>Andere hatten Rechte an der Datei des Datenbestands; jetzt hat sie nur noch ihr Eigentümer.</translation>
    </message>
    <message>
        <source>Our column</source>
        <translation>Unsere Spalte</translation>
    </message>
    <message>
        <source>Out</source>
        <translation>Unterwegs</translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Outgoing calls barred within closed user group</source>
        <translation>Abgehende Verbindungen in der geschlossenen Benutzergruppe gesperrt</translation>
    </message>
    <message>
        <source>Overdue</source>
        <translation>Überfällig</translation>
    </message>
    <message>
        <source>PDF</source>
        <translation>PDF</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>PDF-Dateien (*.pdf)</translation>
    </message>
    <message>
        <source>PDF files (*.pdf);;Pictures (*.svg);;CSV files (*.csv)</source>
        <translation>PDF-Dateien (*.pdf);;Bilder (*.svg);;CSV-Dateien (*.csv)</translation>
    </message>
    <message>
        <source>PIN</source>
        <translation>PIN</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>Pair</source>
        <translation>Doppelader</translation>
    </message>
    <message>
        <source>Pair %1 is in use on circuit %2.</source>
        <translation>Doppelader %1 ist an Anschluss %2 vergeben.</translation>
    </message>
    <message>
        <source>Pair %1. %2</source>
        <translation>Doppelader %1. %2</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>Paper outstanding</source>
        <translation>Papier fehlt</translation>
    </message>
    <message>
        <source>Papers</source>
        <translation>Papiere</translation>
    </message>
    <message>
        <source>Parameter non-existent, passed on; or length error in a mandatory element</source>
        <translation>Parameter existiert nicht, weitergereicht; oder Längenfehler in einem vorgeschriebenen Element</translation>
    </message>
    <message>
        <source>Part %1 of %2.</source>
        <translation>Teil %1 von %2.</translation>
    </message>
    <message>
        <source>Parts of the circuit's page</source>
        <translation>Teile der Anschlussseite</translation>
    </message>
    <message>
        <source>Parts of the register</source>
        <translation>Teile des Registers</translation>
    </message>
    <message>
        <source>Password</source>
        <translation>Passwort</translation>
    </message>
    <message>
        <source>Paste or type: one SPID a line, its number behind a comma;
or CSV with the columns variant,spid,dn</source>
        <translation>Einfügen oder eingeben: je Zeile eine SPID, nach einem Komma ihre Rufnummer;
oder CSV mit den Spalten variant,spid,dn</translation>
    </message>
    <message>
        <source>Path of the test signal</source>
        <translation>Weg des Prüfsignals</translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation>Muster</translation>
    </message>
    <message>
        <source>Pattern lost, or found again</source>
        <translation>Muster verloren oder wieder gefunden</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personen</translation>
    </message>
    <message>
        <source>Permanent frame connection operational</source>
        <translation>Permanente Frame-Verbindung in Betrieb</translation>
    </message>
    <message>
        <source>Permanent frame connection out of service</source>
        <translation>Permanente Frame-Verbindung außer Betrieb</translation>
    </message>
    <message>
        <source>Permission denied</source>
        <translation>Keine Berechtigung</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Point</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>Point-to-point or multipoint, as set in the terminal against the order.</source>
        <translation>Punkt-zu-Punkt oder Mehrpunkt: die Einstellung im Endgerät mit dem Auftrag vergleichen.</translation>
    </message>
    <message>
        <source>Polarity</source>
        <translation>Polarität</translation>
    </message>
    <message>
        <source>Port</source>
        <translation>Port</translation>
    </message>
    <message>
        <source>Possible too: %1.</source>
        <translation>Auch möglich: %1.</translation>
    </message>
    <message>
        <source>Power influence</source>
        <translation>Starkstrombeeinflussung</translation>
    </message>
    <message>
        <source>Power influence, good up to</source>
        <translation>Starkstrombeeinflussung, gut bis</translation>
    </message>
    <message>
        <source>Power influence, marginal up to</source>
        <translation>Starkstrombeeinflussung, grenzwertig bis</translation>
    </message>
    <message>
        <source>Power lines and power equipment count as live until you can see that they are bonded to an accepted ground. Metal conduit, bare ground wires and street-light fixtures below the communications attachment, or less than 20 inches above it, count as live too: test for voltage first, then place a temporary bond to the strand that carries 500 A for 1 s.</source>
        <translation>Starkstromleitungen und ‑geräte gelten als spannungführend, bis man sieht, dass sie mit einer anerkannten Erde verbunden sind. Metallrohre, blanke Erdleiter und Straßenleuchten unter der Fernmeldebefestigung oder weniger als 20 Zoll darüber gelten ebenso: zuerst auf Spannung prüfen, dann eine vorläufige Verbindung zum Tragseil anbringen, die 500 A für 1 s trägt.</translation>
    </message>
    <message>
        <source>Power lines near the cable disturb it more than it can bear.</source>
        <translation>Starkstromleitungen nahe am Kabel stören es mehr, als es verträgt.</translation>
    </message>
    <message>
        <source>Power lines near the cable disturb it nearly as much as it can bear.</source>
        <translation>Starkstromleitungen nahe am Kabel stören es fast so stark, wie es verträgt.</translation>
    </message>
    <message>
        <source>Power lines near the cable disturb it no more than it can bear.</source>
        <translation>Starkstromleitungen nahe am Kabel stören es nicht mehr, als es verträgt.</translation>
    </message>
    <message>
        <source>Power of the network termination and of the terminal; then try one terminal alone at the network termination.</source>
        <translation>Stromversorgung von NT und Endgerät; dann ein einzelnes Endgerät direkt am NT versuchen.</translation>
    </message>
    <message>
        <source>Power of the terminal, its TEI and its SPID state.</source>
        <translation>Stromversorgung, TEI und SPID-Zustand des Endgeräts.</translation>
    </message>
    <message>
        <source>Power on the same pole</source>
        <translation>Starkstrom am selben Mast</translation>
    </message>
    <message>
        <source>Precedence call blocked</source>
        <translation>Bevorrechtigte Verbindung blockiert</translation>
    </message>
    <message>
        <source>Predicted</source>
        <translation>Vorausberechnet</translation>
    </message>
    <message>
        <source>Predicted from the make-up: loop current %1 mA, loss %2 dB at 1004 Hz, slope %3 dB.</source>
        <translation>Aus dem Leitungsaufbau vorausberechnet: Schleifenstrom %1 mA, Dämpfung %2 dB bei 1004 Hz, Dämpfungsverzerrung %3 dB.</translation>
    </message>
    <message>
        <source>Predicted: %1</source>
        <translation>Vorausberechnet: %1</translation>
    </message>
    <message>
        <source>Predicted: %1. %2 dB at %3 kHz ± %4 dB, %5 ohm; %6 and %7 of taps. %8</source>
        <translation>Vorausberechnet: %1. %2 dB bei %3 kHz ± %4 dB, %5 Ohm; %6 und %7 Stichleitungen. %8</translation>
    </message>
    <message>
        <source>Predicted: %1. %2 dB at 1004 Hz, %3 ohm, %4 mA; load coils: %5. %6</source>
        <translation>Vorausberechnet: %1. %2 dB bei 1004 Hz, %3 Ohm, %4 mA; Pupinspulen: %5. %6</translation>
    </message>
    <message>
        <source>Predicts from what the pair is made of, before anybody drives out, whether it can carry the service.</source>
        <translation>Berechnet aus dem Aufbau der Doppelader voraus, bevor jemand hinausfährt, ob sie den Dienst tragen kann.</translation>
    </message>
    <message>
        <source>Preemption</source>
        <translation>Verdrängung</translation>
    </message>
    <message>
        <source>Preemption, circuit reserved for reuse</source>
        <translation>Verdrängung, Kanal zur Wiederverwendung reserviert</translation>
    </message>
    <message>
        <source>Prefix to dial</source>
        <translation>Vorwahl</translation>
    </message>
    <message>
        <source>Premises</source>
        <translation>Adresse</translation>
    </message>
    <message>
        <source>Preview</source>
        <translation>Vorschau</translation>
    </message>
    <message>
        <source>Preview, first page</source>
        <translation>Vorschau, erste Seite</translation>
    </message>
    <message>
        <source>Preview, not issued</source>
        <translation>Vorschau, nicht ausgestellt</translation>
    </message>
    <message>
        <source>Preview, second page</source>
        <translation>Vorschau, zweite Seite</translation>
    </message>
    <message>
        <source>Preview: %1</source>
        <translation>Vorschau: %1</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <source>Print a copy…</source>
        <translation>Kopie drucken…</translation>
    </message>
    <message>
        <source>Print the card, or the certificate one is at</source>
        <translation>Karte drucken oder das Zertifikat, bei dem man ist</translation>
    </message>
    <message>
        <source>Print the card…</source>
        <translation>Karte drucken …</translation>
    </message>
    <message>
        <source>Print the slip for the customer…</source>
        <translation>Zettel für den Kunden drucken …</translation>
    </message>
    <message>
        <source>Print the slip for the desk…</source>
        <translation>Zettel für die Dienststelle drucken …</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Drucken …</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>Fortschritt</translation>
    </message>
    <message>
        <source>Progress of the audit</source>
        <translation>Fortschritt der Prüfung</translation>
    </message>
    <message>
        <source>Progress of the change</source>
        <translation>Fortschritt der Änderung</translation>
    </message>
    <message>
        <source>Progress of the day list</source>
        <translation>Fortschritt der Tagesliste</translation>
    </message>
    <message>
        <source>Progress of the import</source>
        <translation>Fortschritt des Einlesens</translation>
    </message>
    <message>
        <source>Progress of the papers</source>
        <translation>Fortschritt der Papiere</translation>
    </message>
    <message>
        <source>Protector, bond and ground</source>
        <translation>Ableiter, Verbindung und Erde</translation>
    </message>
    <message>
        <source>Protector, bond and ground are in place and sound; none was removed or defeated.</source>
        <translation>Überspannungsschutz, Potentialausgleich und Erde sind vorhanden und in Ordnung; nichts davon wurde entfernt oder unwirksam gemacht.</translation>
    </message>
    <message>
        <source>Protocol error, unspecified</source>
        <translation>Protokollfehler, nicht näher bestimmt</translation>
    </message>
    <message>
        <source>Protocol variant</source>
        <translation>Protokollvariante</translation>
    </message>
    <message>
        <source>Prove the ground lead and make the safety card again.</source>
        <translation>Die Erdleitung des Messgeräts prüfen und die Sicherheitskarte neu anlegen.</translation>
    </message>
    <message>
        <source>Put on hold</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Q.850 cause</source>
        <translation>Q.850-Ursache</translation>
    </message>
    <message>
        <source>Q.850, 1 to 127; may be empty</source>
        <translation>Q.850, 1 bis 127; kann leer bleiben</translation>
    </message>
    <message>
        <source>QoR: ported number</source>
        <translation>QoR: portierte Rufnummer</translation>
    </message>
    <message>
        <source>Quality of service not available</source>
        <translation>Dienstgüte nicht verfügbar</translation>
    </message>
    <message>
        <source>Quiet before it</source>
        <translation>Ruhe davor</translation>
    </message>
    <message>
        <source>Quiet for %1 s — Enter takes it</source>
        <translation>Ruhig seit %1 s – Eingabe übernimmt</translation>
    </message>
    <message>
        <source>Quiet seconds</source>
        <translation>Ruhige Sekunden</translation>
    </message>
    <message>
        <source>Quiet seconds before errors are sent on purpose</source>
        <translation>Fehlerfreie Sekunden vor dem absichtlichen Einfügen von Fehlern</translation>
    </message>
    <message>
        <source>Quiet seconds before errors are sent on purpose, at least</source>
        <translation>Fehlerfreie Sekunden vor dem absichtlichen Einfügen von Fehlern, mindestens</translation>
    </message>
    <message>
        <source>Rate, bit/s</source>
        <translation>Rate, bit/s</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>Read again: %1.</source>
        <translation>Erneut messen: %1.</translation>
    </message>
    <message>
        <source>Read anew.</source>
        <translation>Neu gelesen.</translation>
    </message>
    <message>
        <source>Read as +%1 %2: type the + where that is meant, else the 0 in front</source>
        <translation>Gelesen als +%1 %2: ist das gemeint, das + eingeben, sonst die 0 vorn</translation>
    </message>
    <message>
        <source>Read influence and noise again; the balance can be left empty.</source>
        <translation>Beeinflussung und Geräusch erneut ablesen; die Symmetrie kann leer bleiben.</translation>
    </message>
    <message>
        <source>Read it from the test set.</source>
        <translation>Am Prüfgerät ablesen.</translation>
    </message>
    <message>
        <source>Read the test set again and record the run anew.</source>
        <translation>Das Prüfgerät erneut ablesen und den Messlauf neu erfassen.</translation>
    </message>
    <message>
        <source>Read the test set again.</source>
        <translation>Das Prüfgerät erneut ablesen.</translation>
    </message>
    <message>
        <source>Read what the cause means: it says whether to check number, terminal, wiring or office first, and whose part it is.</source>
        <translation>Lesen, was die Ursache bedeutet: sie sagt, ob zuerst Rufnummer, Endgerät, Verkabelung oder Vermittlungsstelle zu prüfen ist, und wessen Teil es ist.</translation>
    </message>
    <message>
        <source>Read-only file system</source>
        <translation>Das Dateisystem ist nur lesbar</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Messwert</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Messwerte</translation>
    </message>
    <message>
        <source>Readings of %1</source>
        <translation>Messwerte: %1</translation>
    </message>
    <message>
        <source>Readings over time</source>
        <translation>Messwerte im Zeitverlauf</translation>
    </message>
    <message>
        <source>Ready to be taken in</source>
        <translation>Kann aufgenommen werden</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Erfassen</translation>
    </message>
    <message>
        <source>Record %1 with its TEI.</source>
        <translation>Mit TEI erfassen: %1.</translation>
    </message>
    <message>
        <source>Record %1: did the switch accept the SPID?</source>
        <translation>Erfassen: %1 – hat die Vermittlung die SPID angenommen?</translation>
    </message>
    <message>
        <source>Record %1: is it in sync?</source>
        <translation>Erfassen: %1 – im Gleichlauf?</translation>
    </message>
    <message>
        <source>Record it</source>
        <translation>Erfassen</translation>
    </message>
    <message>
        <source>Record it again with the frequency.</source>
        <translation>Erneut mit der Frequenz erfassen.</translation>
    </message>
    <message>
        <source>Record only</source>
        <translation>Nur Aufzeichnung</translation>
    </message>
    <message>
        <source>Record that it is handed on</source>
        <translation>Weitergabe erfassen</translation>
    </message>
    <message>
        <source>Record the %1.</source>
        <translation>Erfassen: %1.</translation>
    </message>
    <message>
        <source>Record the card</source>
        <translation>Karte erfassen</translation>
    </message>
    <message>
        <source>Record the make-up</source>
        <translation>Leitungsaufbau erfassen</translation>
    </message>
    <message>
        <source>Record the measurements with their instrument.</source>
        <translation>Die Messungen mit ihrem Messgerät erfassen.</translation>
    </message>
    <message>
        <source>Record the run</source>
        <translation>Messlauf erfassen</translation>
    </message>
    <message>
        <source>Record what is typed, or go on</source>
        <translation>Eingegebenes erfassen oder weitergehen</translation>
    </message>
    <message>
        <source>Record what was done after the failed run, then make the run again.</source>
        <translation>Erfassen, was nach dem nicht bestandenen Messlauf getan wurde, dann den Messlauf wiederholen.</translation>
    </message>
    <message>
        <source>Record what was measured</source>
        <translation>Gemessenes erfassen</translation>
    </message>
    <message>
        <source>Recorded entries</source>
        <translation>Erfasste Einträge</translation>
    </message>
    <message>
        <source>Recorded later</source>
        <translation>Später eingetragen</translation>
    </message>
    <message>
        <source>Recorded without what could not be read: %1. Do not go back for it.</source>
        <translation>Erfasst ohne das, was nicht messbar war: %1. Deswegen nicht zurückgehen.</translation>
    </message>
    <message>
        <source>Recorded.</source>
        <translation>Erfasst.</translation>
    </message>
    <message>
        <source>Recorded. %1</source>
        <translation>Erfasst. %1</translation>
    </message>
    <message>
        <source>Recorded: handed on to %1.</source>
        <translation>Erfasst: weitergegeben an %1.</translation>
    </message>
    <message>
        <source>Records</source>
        <translation>Datenbestand</translation>
    </message>
    <message>
        <source>Records %1</source>
        <translation>Datenbestand %1</translation>
    </message>
    <message>
        <source>Records (*.sqlite);;All files (*)</source>
        <translation>Datenbestand (*.sqlite);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Records on a &amp;server…</source>
        <translation>Datenbestand auf einem &amp;Server …</translation>
    </message>
    <message>
        <source>Records on a ser&amp;ver…</source>
        <translation>Datenbestand auf einem Ser&amp;ver …</translation>
    </message>
    <message>
        <source>Records on a server</source>
        <translation>Datenbestand auf einem Server</translation>
    </message>
    <message>
        <source>Records on a server…</source>
        <translation>Datenbestand auf einem Server …</translation>
    </message>
    <message>
        <source>Recovery on timer expiry</source>
        <translation>Fehlerbehandlung nach Zeitablauf</translation>
    </message>
    <message>
        <source>Redirection to new destination</source>
        <translation>Umleitung zu neuem Ziel</translation>
    </message>
    <message>
        <source>Reference</source>
        <translation>Referenz</translation>
    </message>
    <message>
        <source>Referral</source>
        <translation>Weitergabe</translation>
    </message>
    <message>
        <source>Referred to %1</source>
        <translation>Weitergegeben an %1</translation>
    </message>
    <message>
        <source>Referred to %1, reference %2</source>
        <translation>Weitergegeben an %1, Zeichen %2</translation>
    </message>
    <message>
        <source>Referred to %1, reference %2, waiting on %3</source>
        <translation>Weitergegeben an %1, Zeichen %2, wartet auf: %3</translation>
    </message>
    <message>
        <source>Referred to %1, waiting on %2</source>
        <translation>Weitergegeben an %1, wartet auf: %2</translation>
    </message>
    <message>
        <source>Refused: %1</source>
        <translation>Abgelehnt: %1</translation>
    </message>
    <message>
        <source>Register</source>
        <translation>Register</translation>
    </message>
    <message>
        <source>Related order</source>
        <translation>Zugehöriger Auftrag</translation>
    </message>
    <message>
        <source>Release the related orders too</source>
        <translation>Verbundene Aufträge auch freigeben</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Bemerkungen</translation>
    </message>
    <message>
        <source>Remarks: %1</source>
        <translation>Bemerkungen: %1</translation>
    </message>
    <message>
        <source>Rename “%1”</source>
        <translation>„%1“ umbenennen</translation>
    </message>
    <message>
        <source>Repair</source>
        <translation>Korrektur</translation>
    </message>
    <message>
        <source>Repeat</source>
        <translation>Wiederholung</translation>
    </message>
    <message>
        <source>Repeats</source>
        <translation>Wiederholungen</translation>
    </message>
    <message>
        <source>Report</source>
        <translation>Auswertung</translation>
    </message>
    <message>
        <source>Report a trouble …</source>
        <translation>Störung melden …</translation>
    </message>
    <message>
        <source>Report it to the switch centre</source>
        <translation>Dem Vermittlungsbetrieb melden</translation>
    </message>
    <message>
        <source>Reports</source>
        <translation>Auswertungen</translation>
    </message>
    <message>
        <source>Requested circuit/channel not available</source>
        <translation>Verlangter Kanal nicht verfügbar</translation>
    </message>
    <message>
        <source>Requested facility not implemented</source>
        <translation>Verlangtes Leistungsmerkmal nicht implementiert</translation>
    </message>
    <message>
        <source>Requested facility not subscribed</source>
        <translation>Verlangtes Leistungsmerkmal nicht bestellt</translation>
    </message>
    <message>
        <source>Resistance between which a basic-rate loop is judged</source>
        <translation>Abschlusswiderstand, bei dem eine Basisanschlussleitung beurteilt wird</translation>
    </message>
    <message>
        <source>Resistance design</source>
        <translation>Widerstandsbemessung</translation>
    </message>
    <message>
        <source>Resistance design, DC resistance</source>
        <translation>Widerstandsbemessung, Gleichstromwiderstand</translation>
    </message>
    <message>
        <source>Resistance design, DC resistance, at most</source>
        <translation>Widerstandsbemessung, Gleichstromwiderstand, höchstens</translation>
    </message>
    <message>
        <source>Resistance design, length without load coils</source>
        <translation>Widerstandsbemessung, Länge ohne Pupinspulen</translation>
    </message>
    <message>
        <source>Resistance design, length without load coils, at most</source>
        <translation>Widerstandsbemessung, Länge ohne Pupinspulen, höchstens</translation>
    </message>
    <message>
        <source>Resistance of the pair, then the feed of the line card.</source>
        <translation>Widerstand der Doppelader, dann die Speisung der Anschlussbaugruppe.</translation>
    </message>
    <message>
        <source>Resistance, Ω</source>
        <translation>Widerstand, Ω</translation>
    </message>
    <message>
        <source>Resource unavailable, unspecified</source>
        <translation>Betriebsmittel nicht verfügbar, nicht näher bestimmt</translation>
    </message>
    <message>
        <source>Response to STATUS ENQUIRY</source>
        <translation>Antwort auf STATUS ENQUIRY</translation>
    </message>
    <message>
        <source>Restart the terminal</source>
        <translation>Das Endgerät neu starten</translation>
    </message>
    <message>
        <source>Restart the terminal and let it start anew.</source>
        <translation>Das Endgerät neu starten und neu anlaufen lassen.</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Results</source>
        <translation>Ergebnisse</translation>
    </message>
    <message>
        <source>Resume</source>
        <translation>Fortsetzen</translation>
    </message>
    <message>
        <source>Revised resistance design</source>
        <translation>Überarbeitete Widerstandsbemessung</translation>
    </message>
    <message>
        <source>Revised resistance design, DC resistance from 18 to 24 kft</source>
        <translation>Überarbeitete Widerstandsbemessung, Gleichstromwiderstand von 18 bis 24 kft</translation>
    </message>
    <message>
        <source>Revised resistance design, DC resistance from 18 to 24 kft, at most</source>
        <translation>Überarbeitete Widerstandsbemessung, Gleichstromwiderstand von 18 bis 24 kft, höchstens</translation>
    </message>
    <message>
        <source>Revised resistance design, DC resistance to 18 kft</source>
        <translation>Überarbeitete Widerstandsbemessung, Gleichstromwiderstand bis 18 kft</translation>
    </message>
    <message>
        <source>Revised resistance design, DC resistance to 18 kft, at most</source>
        <translation>Überarbeitete Widerstandsbemessung, Gleichstromwiderstand bis 18 kft, höchstens</translation>
    </message>
    <message>
        <source>Revised resistance design, bridged taps in total</source>
        <translation>Überarbeitete Widerstandsbemessung, Stichleitungen zusammen</translation>
    </message>
    <message>
        <source>Revised resistance design, bridged taps in total, at most</source>
        <translation>Überarbeitete Widerstandsbemessung, Stichleitungen zusammen, höchstens</translation>
    </message>
    <message>
        <source>Revised resistance design, end section with taps of a loaded loop</source>
        <translation>Überarbeitete Widerstandsbemessung, Endfeld einer bespulten Leitung mit Stichleitungen</translation>
    </message>
    <message>
        <source>Revised resistance design, end section with taps of a loaded loop, at least</source>
        <translation>Überarbeitete Widerstandsbemessung, Endfeld einer bespulten Leitung mit Stichleitungen, mindestens</translation>
    </message>
    <message>
        <source>Revised resistance design, end section with taps of a loaded loop, at most</source>
        <translation>Überarbeitete Widerstandsbemessung, Endfeld einer bespulten Leitung mit Stichleitungen, höchstens</translation>
    </message>
    <message>
        <source>Revised resistance design, length on copper</source>
        <translation>Überarbeitete Widerstandsbemessung, Länge auf Kupfer</translation>
    </message>
    <message>
        <source>Revised resistance design, length on copper, at most</source>
        <translation>Überarbeitete Widerstandsbemessung, Länge auf Kupfer, höchstens</translation>
    </message>
    <message>
        <source>Revised resistance design, length without load coils</source>
        <translation>Überarbeitete Widerstandsbemessung, Länge ohne Pupinspulen</translation>
    </message>
    <message>
        <source>Revised resistance design, length without load coils, at most</source>
        <translation>Überarbeitete Widerstandsbemessung, Länge ohne Pupinspulen, höchstens</translation>
    </message>
    <message>
        <source>Ringing</source>
        <translation>Ruf</translation>
    </message>
    <message>
        <source>Ringing of %1 V cannot be: no office rings with more than %2 V.</source>
        <translation>Eine Rufspannung von %1 V ist unmöglich: keine Vermittlungsstelle ruft mit mehr als %2 V.</translation>
    </message>
    <message>
        <source>Ringing voltage</source>
        <translation>Rufspannung</translation>
    </message>
    <message>
        <source>Ringing voltage at the interface, good from</source>
        <translation>Rufspannung an der Übergabestelle, gut ab</translation>
    </message>
    <message>
        <source>Ringing voltage at the interface, marginal from</source>
        <translation>Rufspannung an der Übergabestelle, grenzwertig ab</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Rolle</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Zeile</translation>
    </message>
    <message>
        <source>Row %1, %2: %3</source>
        <translation>Zeile %1, %2: %3</translation>
    </message>
    <message>
        <source>Rows taken in before that: %1. Import the same file again, and it takes in the others.</source>
        <translation>Vorher übernommene Zeilen: %1. Lesen Sie dieselbe Datei noch einmal ein, dann kommen die anderen dazu.</translation>
    </message>
    <message>
        <source>Rows that are there with other values change them</source>
        <translation>Vorhandene Zeilen mit anderen Werten ändern</translation>
    </message>
    <message>
        <source>Rows with words that are not ours will be refused: %1.</source>
        <translation>Zeilen mit fremden Wörtern werden abgelehnt: %1.</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>Messlauf</translation>
    </message>
    <message>
        <source>Run clock</source>
        <translation>Messlaufuhr</translation>
    </message>
    <message>
        <source>Run of order %1: %2 left</source>
        <translation>Messlauf zu Auftrag %1: noch %2</translation>
    </message>
    <message>
        <source>Run on %1</source>
        <translation>Messlauf auf %1</translation>
    </message>
    <message>
        <source>Run on %1, %2, stopped early: %3, %4, %5 severely errored</source>
        <translation>Messlauf auf %1, %2, vorzeitig beendet: %3, %4, %5 davon stark fehlerhaft</translation>
    </message>
    <message>
        <source>Run on %1, %2, stopped early: %3, %4, %5 severely errored: %6</source>
        <translation>Messlauf auf %1, %2, vorzeitig beendet: %3, %4, %5 davon stark fehlerhaft: %6</translation>
    </message>
    <message>
        <source>Run on %1, %2: %3, %4, %5 severely errored</source>
        <translation>Messlauf auf %1, %2: %3, %4, %5 davon stark fehlerhaft</translation>
    </message>
    <message>
        <source>Run on %1, %2: %3, %4, %5 severely errored: %6</source>
        <translation>Messlauf auf %1, %2: %3, %4, %5 davon stark fehlerhaft: %6</translation>
    </message>
    <message>
        <source>Run, %1</source>
        <translation>Messlauf, %1</translation>
    </message>
    <message>
        <source>Run: %1</source>
        <translation>Messlauf: %1</translation>
    </message>
    <message>
        <source>Runs that are over</source>
        <translation>Beendete Messläufe</translation>
    </message>
    <message>
        <source>S.C. Code Regs. 103-663.3</source>
        <translation>S.C. Code Regs. 103-663.3</translation>
    </message>
    <message>
        <source>S/T</source>
        <translation>S/T</translation>
    </message>
    <message>
        <source>S/T interface</source>
        <translation>S/T-Schnittstelle</translation>
    </message>
    <message>
        <source>SES</source>
        <translation>SES</translation>
    </message>
    <message>
        <source>SPID</source>
        <translation>SPID</translation>
    </message>
    <message>
        <source>SPID %1</source>
        <translation>SPID %1</translation>
    </message>
    <message>
        <source>SPID %1 accepted by the switch</source>
        <translation>SPID %1 von der Vermittlung angenommen</translation>
    </message>
    <message>
        <source>SPID %1 accepted.</source>
        <translation>SPID %1 angenommen.</translation>
    </message>
    <message>
        <source>SPID %1 is in use on circuit %2.</source>
        <translation>SPID %1 ist an Anschluss %2 vergeben.</translation>
    </message>
    <message>
        <source>SPID accepted</source>
        <translation>SPID angenommen</translation>
    </message>
    <message>
        <source>SPID and DN stand in each other's place</source>
        <translation>SPID und DN sind vertauscht</translation>
    </message>
    <message>
        <source>SPID entry</source>
        <translation>Eingabe der SPID</translation>
    </message>
    <message>
        <source>SPID not accepted</source>
        <translation>SPID nicht angenommen</translation>
    </message>
    <message>
        <source>SPID taken apart</source>
        <translation>Zerlegte SPID</translation>
    </message>
    <message>
        <source>SPID twice</source>
        <translation>SPID doppelt</translation>
    </message>
    <message>
        <source>SPIDs to check</source>
        <translation>Zu prüfende SPIDs</translation>
    </message>
    <message>
        <source>Safety</source>
        <translation>Sicherheit</translation>
    </message>
    <message>
        <source>Safety card</source>
        <translation>Sicherheitskarte</translation>
    </message>
    <message>
        <source>Safety card of this pair</source>
        <translation>Sicherheitskarte dieser Doppelader</translation>
    </message>
    <message>
        <source>Safety card: %1; %2 of %3 confirmed</source>
        <translation>Sicherheitskarte: %1; %2 von %3 bestätigt</translation>
    </message>
    <message>
        <source>Said to be closed: %1, by word of %2, %3. A clear card is still to come.</source>
        <translation>Angeblich behoben: %1, nach Auskunft von %2, %3. Eine freie Karte steht noch aus.</translation>
    </message>
    <message>
        <source>Said to be closed: %1, by word of %2, reference %3, %4. A clear card is still to come.</source>
        <translation>Angeblich behoben: %1, nach Auskunft von %2, Zeichen %3, %4. Eine freie Karte steht noch aus.</translation>
    </message>
    <message>
        <source>Said to be closed: %1. A clear card is still to come.</source>
        <translation>Angeblich behoben: %1. Eine freie Karte steht noch aus.</translation>
    </message>
    <message>
        <source>Save a copy as PDF</source>
        <translation>Kopie als PDF speichern</translation>
    </message>
    <message>
        <source>Save a sample</source>
        <translation>Muster speichern</translation>
    </message>
    <message>
        <source>Save a sample…</source>
        <translation>Muster speichern…</translation>
    </message>
    <message>
        <source>Save as CSV…</source>
        <translation>Als CSV speichern …</translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Als PDF speichern</translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation>Als PDF speichern …</translation>
    </message>
    <message>
        <source>Save as…</source>
        <translation>Speichern unter …</translation>
    </message>
    <message>
        <source>Save the card as PDF…</source>
        <translation>Karte als PDF speichern …</translation>
    </message>
    <message>
        <source>Save the loops</source>
        <translation>Anschlussleitungen speichern</translation>
    </message>
    <message>
        <source>Save the order</source>
        <translation>Auftrag speichern</translation>
    </message>
    <message>
        <source>Save the refused rows</source>
        <translation>Abgelehnte Zeilen speichern</translation>
    </message>
    <message>
        <source>Save the refused rows…</source>
        <translation>Abgelehnte Zeilen speichern …</translation>
    </message>
    <message>
        <source>Save the report</source>
        <translation>Auswertung speichern</translation>
    </message>
    <message>
        <source>Save the settings cards</source>
        <translation>Einstellungskarten speichern</translation>
    </message>
    <message>
        <source>Save the settings cards…</source>
        <translation>Einstellungskarten speichern…</translation>
    </message>
    <message>
        <source>Save the slip for the customer as PDF…</source>
        <translation>Zettel für den Kunden als PDF speichern …</translation>
    </message>
    <message>
        <source>Save the slip for the desk as PDF…</source>
        <translation>Zettel für die Dienststelle als PDF speichern …</translation>
    </message>
    <message>
        <source>Save the verdicts</source>
        <translation>Ergebnisse speichern</translation>
    </message>
    <message>
        <source>Save the verdicts…</source>
        <translation>Ergebnisse speichern …</translation>
    </message>
    <message>
        <source>Save what the columns stand for</source>
        <translation>Spaltenzuordnung speichern</translation>
    </message>
    <message>
        <source>Saved as %1, and its settings card beside it.</source>
        <translation>Gespeichert als %1, daneben die Einstellungskarte.</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>Gespeichert als %1.</translation>
    </message>
    <message>
        <source>Saved in %1.</source>
        <translation>Gespeichert in %1.</translation>
    </message>
    <message>
        <source>Save…</source>
        <translation>Speichern …</translation>
    </message>
    <message>
        <source>Say into which file it goes: on a stick, or in a shared folder.</source>
        <translation>Sagen Sie, in welche Datei es geht: auf einem Stick oder in einem gemeinsamen Ordner.</translation>
    </message>
    <message>
        <source>Say into which file they go: on a stick, or in a shared folder.</source>
        <translation>Sagen Sie, in welche Datei sie gehen: auf einem Stick oder in einem gemeinsamen Ordner.</translation>
    </message>
    <message>
        <source>Say on which day.</source>
        <translation>Angeben, an welchem Tag.</translation>
    </message>
    <message>
        <source>Say what is missing.</source>
        <translation>Angeben, was fehlt.</translation>
    </message>
    <message>
        <source>Say what was done.</source>
        <translation>Angeben, was getan wurde.</translation>
    </message>
    <message>
        <source>Say when you arrive: every entry of today then belongs to this visit, for every line at these premises. Without it the calendar day is the visit.</source>
        <translation>Geben Sie Ihre Ankunft an: Dann gehört jeder heutige Eintrag zu diesem Einsatz, für jeden Anschluss auf diesem Grundstück. Sonst gilt der Kalendertag als Einsatz.</translation>
    </message>
    <message>
        <source>Say when you arrive: every entry of today then belongs to this visit. Without it the calendar day is the visit.</source>
        <translation>Geben Sie Ihre Ankunft an: Dann gehört jeder heutige Eintrag zu diesem Einsatz. Sonst gilt der Kalendertag als Einsatz.</translation>
    </message>
    <message>
        <source>Say where they are saved.</source>
        <translation>Angeben, wo gespeichert wird.</translation>
    </message>
    <message>
        <source>Say which instrument it is.</source>
        <translation>Angeben, welches Messgerät es ist.</translation>
    </message>
    <message>
        <source>Say which papers.</source>
        <translation>Angeben, welche Papiere.</translation>
    </message>
    <message>
        <source>Say who goes there.</source>
        <translation>Angeben, wer hingeht.</translation>
    </message>
    <message>
        <source>Say who has to act first.</source>
        <translation>Angeben, wer zuerst handeln muss.</translation>
    </message>
    <message>
        <source>Say why it is another day: the customer was told the first one.</source>
        <translation>Angeben, warum es ein anderer Tag ist: Dem Kunden wurde der erste genannt.</translation>
    </message>
    <message>
        <source>Say why it is cancelled.</source>
        <translation>Angeben, warum storniert wird.</translation>
    </message>
    <message>
        <source>Say why it is settled so.</source>
        <translation>Sagen Sie, warum es so geklärt wird.</translation>
    </message>
    <message>
        <source>Say why the key is made anew.</source>
        <translation>Bitte sagen, warum der Schlüssel neu gemacht wird.</translation>
    </message>
    <message>
        <source>Say why the van is believed no longer.</source>
        <translation>Sagen Sie, warum dem Wagen nicht mehr geglaubt wird.</translation>
    </message>
    <message>
        <source>Say why they did not go along.</source>
        <translation>Sagen Sie, warum sie nicht mitgegangen sind.</translation>
    </message>
    <message>
        <source>Say with which instrument the readings were made.</source>
        <translation>Angeben, mit welchem Messgerät gemessen wurde.</translation>
    </message>
    <message>
        <source>Say with which instrument you measure.</source>
        <translation>Angeben, mit welchem Messgerät Sie messen.</translation>
    </message>
    <message>
        <source>Says for the customer what was measured against which limit, signed, so that a change is found.</source>
        <translation>Sagt dem Kunden, was gegen welchen Grenzwert gemessen wurde, signiert, damit eine Änderung auffällt.</translation>
    </message>
    <message>
        <source>Says what the customer gets, on which pair and with which numbers; all that follows is held against it.</source>
        <translation>Sagt, was der Kunde bekommt, auf welcher Doppelader und mit welchen Rufnummern; alles Weitere wird daran gemessen.</translation>
    </message>
    <message>
        <source>Says who is at the premises, and since when; what is recorded until leaving belongs to this visit.</source>
        <translation>Sagt, wer auf dem Grundstück ist und seit wann; was bis zum Gehen erfasst wird, gehört zu diesem Einsatz.</translation>
    </message>
    <message>
        <source>Screens</source>
        <translation>Seiten</translation>
    </message>
    <message>
        <source>Sealing current</source>
        <translation>Benetzungsstrom</translation>
    </message>
    <message>
        <source>Seconds (*.csv *.txt)</source>
        <translation>Sekunden (*.csv *.txt)</translation>
    </message>
    <message>
        <source>Seconds of a run</source>
        <translation>Sekunden eines Messlaufs</translation>
    </message>
    <message>
        <source>Seconds taken from a file</source>
        <translation>Sekunden aus einer Datei übernommen</translation>
    </message>
    <message>
        <source>Section</source>
        <translation>Abschnitt</translation>
    </message>
    <message>
        <source>See that the network is there, and that server, database, login and password are as who keeps the server says; a password is asked for anew under “Records on a server”.</source>
        <translation>Sehen Sie nach, ob das Netz da ist und ob Server, Datenbank, Anmeldung und Passwort so sind, wie die Betreuung des Servers sagt; nach einem Passwort wird unter „Datenbestand auf einem Server“ neu gefragt.</translation>
    </message>
    <message>
        <source>See whether it is the pair of the order; have load coils and bridged taps taken off, or take another pair of the cable.</source>
        <translation>Prüfen, ob es die Doppelader des Auftrags ist; Pupinspulen und Stichleitungen entfernen lassen oder eine andere Doppelader des Kabels nehmen.</translation>
    </message>
    <message>
        <source>See whether it is the pair of the order; then look for bad joints, taps and coils, and measure again.</source>
        <translation>Prüfen, ob es die Doppelader des Auftrags ist; dann nach schlechten Spleißen, Stichleitungen und Spulen suchen und noch einmal messen.</translation>
    </message>
    <message>
        <source>Seen: number %1 is that of two certificates (%2), of order %3; the one that is not here must be issued anew, by records with a tag of their own.</source>
        <translation>Gesehen: Die Nummer %1 haben zwei Zertifikate (%2), von Auftrag %3; das, welches nicht hier ist, muss neu ausgestellt werden, von Aufzeichnungen mit eigenem Kürzel.</translation>
    </message>
    <message>
        <source>Seen: the records of this station are in use twice, or an older copy of them is. It must be restored from a backup, which gives it a new tag, and added again.</source>
        <translation>Gesehen: Die Aufzeichnungen dieser Station werden doppelt benutzt, oder eine ältere Kopie davon. Sie muss aus einer Sicherung wiederhergestellt werden, was ihr ein neues Kürzel gibt, und neu aufgenommen werden.</translation>
    </message>
    <message>
        <source>Seen: what came after the end is kept and decides nothing.</source>
        <translation>Gesehen: Was nach dem Abschluss kam, bleibt erhalten und entscheidet nichts.</translation>
    </message>
    <message>
        <source>Select several rows, or all</source>
        <translation>Mehrere oder alle Zeilen auswählen</translation>
    </message>
    <message>
        <source>Selected order</source>
        <translation>Ausgewählter Auftrag</translation>
    </message>
    <message>
        <source>Selected orders</source>
        <translation>Ausgewählte Aufträge</translation>
    </message>
    <message>
        <source>Self-call</source>
        <translation>Selbstanruf</translation>
    </message>
    <message>
        <source>Self-test</source>
        <translation>Selbsttest</translation>
    </message>
    <message>
        <source>Self-test of the instrument</source>
        <translation>Selbsttest des Messgeräts</translation>
    </message>
    <message>
        <source>Self-test of the instrument %1</source>
        <translation>Selbsttest des Messgeräts: %1</translation>
    </message>
    <message>
        <source>Send special information tone</source>
        <translation>Hinweiston senden</translation>
    </message>
    <message>
        <source>Sent to the printer.</source>
        <translation>An den Drucker gesendet.</translation>
    </message>
    <message>
        <source>Serial</source>
        <translation>Seriennummer</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation>Seriennummer</translation>
    </message>
    <message>
        <source>Serial of the NT</source>
        <translation>Seriennummer des NT</translation>
    </message>
    <message>
        <source>Server</source>
        <translation>Server</translation>
    </message>
    <message>
        <source>Server, database and login must be said.</source>
        <translation>Server, Datenbank und Anmeldung müssen angegeben werden.</translation>
    </message>
    <message>
        <source>Service</source>
        <translation>Dienst</translation>
    </message>
    <message>
        <source>Service or option not available, unspecified</source>
        <translation>Dienst oder Option nicht verfügbar, nicht näher bestimmt</translation>
    </message>
    <message>
        <source>Service or option not implemented, unspecified</source>
        <translation>Dienst oder Option nicht implementiert, nicht näher bestimmt</translation>
    </message>
    <message>
        <source>Serving office</source>
        <translation>Vermittlungsstelle</translation>
    </message>
    <message>
        <source>Serving offices</source>
        <translation>Vermittlungsstellen</translation>
    </message>
    <message>
        <source>Serving-area bridged taps in total</source>
        <translation>Versorgungsbereich, Stichleitungen zusammen</translation>
    </message>
    <message>
        <source>Serving-area bridged taps in total, at most</source>
        <translation>Versorgungsbereich, Stichleitungen zusammen, höchstens</translation>
    </message>
    <message>
        <source>Serving-area changes of gauge</source>
        <translation>Versorgungsbereich, Wechsel der Drahtstärke</translation>
    </message>
    <message>
        <source>Serving-area changes of gauge, at most</source>
        <translation>Versorgungsbereich, Wechsel der Drahtstärke, höchstens</translation>
    </message>
    <message>
        <source>Serving-area length of 24 AWG and coarser with taps</source>
        <translation>Versorgungsbereich, Länge von 24 AWG und dicker mit Stichleitungen</translation>
    </message>
    <message>
        <source>Serving-area length of 24 AWG and coarser with taps, at most</source>
        <translation>Versorgungsbereich, Länge von 24 AWG und dicker mit Stichleitungen, höchstens</translation>
    </message>
    <message>
        <source>Serving-area length of 26 AWG with taps</source>
        <translation>Versorgungsbereich, Länge von 26 AWG mit Stichleitungen</translation>
    </message>
    <message>
        <source>Serving-area length of 26 AWG with taps, at most</source>
        <translation>Versorgungsbereich, Länge von 26 AWG mit Stichleitungen, höchstens</translation>
    </message>
    <message>
        <source>Serving-area length with taps for its gauges</source>
        <translation>Länge mit Stichleitungen im Versorgungsbereich, je nach Drahtstärke</translation>
    </message>
    <message>
        <source>Serving-area single bridged tap</source>
        <translation>Versorgungsbereich, einzelne Stichleitung</translation>
    </message>
    <message>
        <source>Serving-area single bridged tap, at most</source>
        <translation>Versorgungsbereich, einzelne Stichleitung, höchstens</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Satz</translation>
    </message>
    <message>
        <source>Set made</source>
        <translation>Zusammengestellt</translation>
    </message>
    <message>
        <source>Set out signs, cones and a warning garment before you work beside or in a road; park between the traffic and yourself.</source>
        <translation>Schilder und Kegel aufstellen und Warnkleidung tragen, bevor man neben oder auf einer Straße arbeitet; das Fahrzeug zwischen sich und dem Verkehr parken.</translation>
    </message>
    <message>
        <source>Set the TEI of the terminal as ordered and start it again.</source>
        <translation>Den TEI des Endgeräts wie bestellt einstellen und das Endgerät neu starten.</translation>
    </message>
    <message>
        <source>Set the terminals to automatic TEI and start them one by one.</source>
        <translation>Die Endgeräte auf automatischen TEI einstellen und nacheinander starten.</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>Settings %1</source>
        <translation>Einstellungen %1</translation>
    </message>
    <message>
        <source>Settings card with it</source>
        <translation>Einstellungskarte dazu</translation>
    </message>
    <message>
        <source>Settings cards</source>
        <translation>Einstellungskarten</translation>
    </message>
    <message>
        <source>Settings cards saved: %1, in %2.</source>
        <translation>Einstellungskarten gespeichert: %1, in %2.</translation>
    </message>
    <message>
        <source>Settings for your equipment</source>
        <translation>Einstellungen für Ihr Gerät</translation>
    </message>
    <message>
        <source>Settings for your equipment, continued</source>
        <translation>Einstellungen für Ihr Gerät, Fortsetzung</translation>
    </message>
    <message>
        <source>Settings to program</source>
        <translation>Einzustellende Werte</translation>
    </message>
    <message>
        <source>Settle between stations</source>
        <translation>Zwischen Stationen klären</translation>
    </message>
    <message>
        <source>Settle between stations: order %1</source>
        <translation>Zwischen Stationen klären: Auftrag %1</translation>
    </message>
    <message>
        <source>Settle it</source>
        <translation>Klären</translation>
    </message>
    <message>
        <source>Settle it anew</source>
        <translation>Neu klären</translation>
    </message>
    <message>
        <source>Settle what stations say otherwise</source>
        <translation>Klären, worin Stationen sich widersprechen</translation>
    </message>
    <message>
        <source>Settled: %1, by %2, %3: %4.</source>
        <translation>Geklärt: %1, durch %2, %3: %4.</translation>
    </message>
    <message>
        <source>Settle…</source>
        <translation>Klären…</translation>
    </message>
    <message>
        <source>Several bundles that were brought begin with "%1": give more of its digits.</source>
        <translation>Mehrere zurückgebrachte Bündel beginnen mit „%1“: Geben Sie mehr Stellen an.</translation>
    </message>
    <message>
        <source>Severely errored second</source>
        <translation>Stark fehlerhafte Sekunde</translation>
    </message>
    <message>
        <source>Severely errored seconds</source>
        <translation>Stark fehlerhafte Sekunden</translation>
    </message>
    <message>
        <source>Severely errored seconds of the run</source>
        <translation>Stark fehlerhafte Sekunden des Messlaufs</translation>
    </message>
    <message>
        <source>Severely errored seconds of the run, at most</source>
        <translation>Stark fehlerhafte Sekunden des Messlaufs, höchstens</translation>
    </message>
    <message>
        <source>Severely errored, unavailable</source>
        <translation>Stark fehlerhaft, nicht verfügbar</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Anteil</translation>
    </message>
    <message>
        <source>Sharing and terminal id are %1: legal, but not every provider offers other than 0101</source>
        <translation>Sharing- und Endgerätekennung sind %1: zulässig, aber nicht jeder Anbieter bietet anderes als 0101</translation>
    </message>
    <message>
        <source>Sharing id %1 (%2) is outside 01 to 32</source>
        <translation>Sharing-Kennung %1 (%2) liegt nicht in 01 bis 32</translation>
    </message>
    <message>
        <source>Sharing id %1 (%2) where 01 to 32 is usual: confirm it with the provider</source>
        <translation>Sharing-Kennung %1 (%2), üblich ist 01 bis 32: beim Anbieter bestätigen lassen</translation>
    </message>
    <message>
        <source>Shift or Ctrl+arrows, Ctrl+A</source>
        <translation>Umschalt oder Strg+Pfeile, Strg+A</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Zeigen</translation>
    </message>
    <message>
        <source>Show %1 earlier entries (Enter)</source>
        <translation>Frühere Einträge zeigen: %1 (Eingabe)</translation>
    </message>
    <message>
        <source>Show its evidence (Enter)</source>
        <translation>Nachweis zeigen (Eingabe)</translation>
    </message>
    <message>
        <source>Show what is settled too</source>
        <translation>Auch Geklärtes zeigen</translation>
    </message>
    <message>
        <source>Show what would be</source>
        <translation>Auswirkung zeigen</translation>
    </message>
    <message>
        <source>Shows by calls out and in that each channel and each number carries the services that were ordered.</source>
        <translation>Zeigt durch abgehende und ankommende Anrufe, dass jeder Kanal und jede Rufnummer die bestellten Dienste trägt.</translation>
    </message>
    <message>
        <source>Shows first that the test set sees errors that are made on purpose, then counts bit errors on each channel that carries data.</source>
        <translation>Zeigt zuerst, dass das Messgerät absichtliche Fehler sieht, und zählt dann Bitfehler auf jedem Kanal, der Daten trägt.</translation>
    </message>
    <message>
        <source>Shows that this pair was measured on this visit before anybody worked on it, and what was read.</source>
        <translation>Zeigt, dass diese Doppelader bei diesem Einsatz gemessen wurde, bevor jemand an ihr arbeitete, und was abgelesen wurde.</translation>
    </message>
    <message>
        <source>Shows the line layer by layer: in step with the office, an address for each terminal, each SPID accepted.</source>
        <translation>Zeigt den Anschluss Schicht für Schicht: im Gleichlauf mit der Vermittlungsstelle, eine Adresse für jedes Endgerät, jede SPID angenommen.</translation>
    </message>
    <message>
        <source>Shows the numbers, SPIDs and TEIs that go into the customer's equipment, and whether they fit the switch and belong to no other line.</source>
        <translation>Zeigt die Rufnummern, SPIDs und TEIs für die Geräte des Kunden, und ob sie zur Vermittlung passen und keinem anderen Anschluss gehören.</translation>
    </message>
    <message>
        <source>Sign here; Delete wipes it</source>
        <translation>Hier unterschreiben; Entf löscht es</translation>
    </message>
    <message>
        <source>Signature of the customer</source>
        <translation>Unterschrift des Kunden</translation>
    </message>
    <message>
        <source>Signature of the installer</source>
        <translation>Unterschrift des Monteurs</translation>
    </message>
    <message>
        <source>Signed by</source>
        <translation>Signiert von</translation>
    </message>
    <message>
        <source>Signed by %1 on %2.</source>
        <translation>Unterschrieben von %1 am %2.</translation>
    </message>
    <message>
        <source>Signs for the customer</source>
        <translation>Unterschreibt für den Kunden</translation>
    </message>
    <message>
        <source>Signs for the installer</source>
        <translation>Unterschreibt als Monteur</translation>
    </message>
    <message>
        <source>Since</source>
        <translation>Seit</translation>
    </message>
    <message>
        <source>Since order %1 was completed %2: a certificate of it would say what holds no longer.</source>
        <translation>Seit Auftrag %1 abgeschlossen wurde, gilt: %2. Ein Zertifikat darüber würde sagen, was nicht mehr stimmt.</translation>
    </message>
    <message>
        <source>Since then %1 by order %2.</source>
        <translation>Seither durch Auftrag %2: %1.</translation>
    </message>
    <message>
        <source>Since then %1.</source>
        <translation>Seither: %1.</translation>
    </message>
    <message>
        <source>Since then the type of the order was changed.</source>
        <translation>Seither wurde die Art des Auftrags geändert.</translation>
    </message>
    <message>
        <source>Size %1 %</source>
        <translation>Größe %1 %</translation>
    </message>
    <message>
        <source>Slip</source>
        <translation>Schlupf</translation>
    </message>
    <message>
        <source>Slips for customers</source>
        <translation>Zettel für Kunden</translation>
    </message>
    <message>
        <source>Slips for the desk</source>
        <translation>Zettel für die Dienststelle</translation>
    </message>
    <message>
        <source>Slips in the run where the instrument tells them</source>
        <translation>Schlupfe im Messlauf, wo das Messgerät sie anzeigt</translation>
    </message>
    <message>
        <source>Slips in the run where the instrument tells them, at most</source>
        <translation>Schlupfe im Messlauf, wo das Messgerät sie anzeigt, höchstens</translation>
    </message>
    <message>
        <source>Slope</source>
        <translation>Dämpfungsverzerrung</translation>
    </message>
    <message>
        <source>Slope, 404 and 2804 Hz against 1004 Hz, good up to</source>
        <translation>Dämpfungsverzerrung, 404 und 2804 Hz gegen 1004 Hz, gut bis</translation>
    </message>
    <message>
        <source>Slope, 404 and 2804 Hz against 1004 Hz, marginal up to</source>
        <translation>Dämpfungsverzerrung, 404 und 2804 Hz gegen 1004 Hz, grenzwertig bis</translation>
    </message>
    <message>
        <source>So already: %1.</source>
        <translation>Schon so: %1.</translation>
    </message>
    <message>
        <source>So many bit errors, or one</source>
        <translation>So viele Bitfehler oder einer</translation>
    </message>
    <message>
        <source>Some letters of what is to be done, or its initials</source>
        <translation>Einige Buchstaben des Befehls oder seine Anfangsbuchstaben</translation>
    </message>
    <message>
        <source>Some of it is dated before %1 took the order along: its clock is behind, or it was entered late.</source>
        <translation>Einiges davon trägt eine Zeit, bevor %1 den Auftrag mitnahm: Die Uhr dort geht nach, oder es wurde spät eingetragen.</translation>
    </message>
    <message>
        <source>Something on the line was changed</source>
        <translation>An der Leitung wurde etwas geändert</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>Source of the limit: %1</source>
        <translation>Quelle des Grenzwerts: %1</translation>
    </message>
    <message>
        <source>Span power</source>
        <translation>Fernspeisung</translation>
    </message>
    <message>
        <source>Spans between load coils with a bridged tap</source>
        <translation>Spulenfelder mit Stichleitung</translation>
    </message>
    <message>
        <source>Spare pairs</source>
        <translation>Freie Doppeladern</translation>
    </message>
    <message>
        <source>Spoken to</source>
        <translation>Gesprochen mit</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>Stands at</source>
        <translation>Steht bei</translation>
    </message>
    <message>
        <source>Stands at: %1</source>
        <translation>Steht bei: %1</translation>
    </message>
    <message>
        <source>Stands for</source>
        <translation>Steht für</translation>
    </message>
    <message>
        <source>Start the run</source>
        <translation>Messlauf starten</translation>
    </message>
    <message>
        <source>Started at</source>
        <translation>Beginn</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Status</translation>
    </message>
    <message>
        <source>Station</source>
        <translation>Station</translation>
    </message>
    <message>
        <source>Station %1 has another key since.</source>
        <translation>Station %1 hat inzwischen einen anderen Schlüssel.</translation>
    </message>
    <message>
        <source>Station %1 has the tag %2, and the file says %3. If it was restored, say so.</source>
        <translation>Station %1 hat das Kürzel %2, und die Datei sagt %3. Wurde sie wiederhergestellt, sagen Sie das dazu.</translation>
    </message>
    <message>
        <source>Station %1 has this order too: agree who works on it.</source>
        <translation>Station %1 hat diesen Auftrag auch: Sprechen Sie ab, wer daran arbeitet.</translation>
    </message>
    <message>
        <source>Station %1 tells another history than before: an older copy of its records was put in their place, or they are in use twice. Have it restored from a backup, which gives it a new tag, and added again.</source>
        <translation>Station %1 teilt einen anderen Verlauf mit als vorher: Ihre Aufzeichnungen wurden durch eine ältere Kopie ersetzt, oder sie werden doppelt benutzt. Lassen Sie sie aus einer Sicherung wiederherstellen, was ihr ein neues Kürzel gibt, und nehmen Sie sie neu auf.</translation>
    </message>
    <message>
        <source>Station %1 told another history of %2 before: its records were replaced by an older copy without restore.</source>
        <translation>Station %1 hat vorher eine andere Geschichte von %2 mitgeteilt: Ihre Aufzeichnungen wurden ohne Wiederherstellung durch eine ältere Kopie ersetzt.</translation>
    </message>
    <message>
        <source>Station %1 was declared lost.</source>
        <translation>Station %1 wurde als verloren gemeldet.</translation>
    </message>
    <message>
        <source>Station %1 was declared lost: its records must be restored, which gives them a new tag, before it is added again.</source>
        <translation>Station %1 wurde als verloren gemeldet: Bevor sie neu aufgenommen wird, müssen ihre Aufzeichnungen wiederhergestellt werden, was ihnen ein neues Kürzel gibt.</translation>
    </message>
    <message>
        <source>Stations tell otherwise what this card read: until somebody settles that, no closing of it counts.</source>
        <translation>Was diese Karte gemessen hat, sagen Stationen verschieden: bis jemand entscheidet, was gilt, ist damit nichts behoben.</translation>
    </message>
    <message>
        <source>Stays</source>
        <translation>Bleibt</translation>
    </message>
    <message>
        <source>Stays here.</source>
        <translation>Bleibt hier.</translation>
    </message>
    <message>
        <source>Stays: it is %1.</source>
        <translation>Bleibt: Er ist %1.</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Stoppen</translation>
    </message>
    <message>
        <source>Stop making the demo</source>
        <translation>Anlegen der Demo abbrechen</translation>
    </message>
    <message>
        <source>Stop making the demo (%1 of %2)</source>
        <translation>Anlegen der Demo abbrechen (%1 von %2)</translation>
    </message>
    <message>
        <source>Stop the &amp;export</source>
        <translation>Aus&amp;gabe stoppen</translation>
    </message>
    <message>
        <source>Stop the &amp;export (%1 orders so far)</source>
        <translation>Aus&amp;gabe stoppen (bisher %1 Aufträge)</translation>
    </message>
    <message>
        <source>Stop the export</source>
        <translation>Ausgabe abbrechen</translation>
    </message>
    <message>
        <source>Stop the run, or go on</source>
        <translation>Messlauf anhalten oder fortsetzen</translation>
    </message>
    <message>
        <source>Stop, move away, report. Nobody touches the pair until the source is found.</source>
        <translation>Aufhören, weggehen, melden. Niemand berührt die Doppelader, bis die Quelle gefunden ist.</translation>
    </message>
    <message>
        <source>Stop, move away, report. Ringing is about 90 V: measure again only when the line is known not to ring.</source>
        <translation>Aufhören, weggehen, melden. Der Ruf hat etwa 90 V: erst wieder messen, wenn feststeht, dass kein Ruf anliegt.</translation>
    </message>
    <message>
        <source>Stop, move away, report. That %1 names it (%2) does not make it safe to touch: have it turned off and tagged, and prove the pair dead; it is restored hands off and measured at guarded points.</source>
        <translation>Aufhören, weggehen, melden. Dass %1 die Quelle nennt (%2), macht das Berühren nicht sicher: abschalten und kennzeichnen lassen und die Doppelader spannungsfrei nachweisen; wieder eingeschaltet wird ohne Berührung, gemessen an geschützten Stellen.</translation>
    </message>
    <message>
        <source>Stop: nobody touches the pair.</source>
        <translation>Halt: Niemand berührt die Doppelader.</translation>
    </message>
    <message>
        <source>Stopped.</source>
        <translation>Angehalten.</translation>
    </message>
    <message>
        <source>Strike-out</source>
        <translation>Streichung</translation>
    </message>
    <message>
        <source>Subaddress or user data were not carried: harmless to voice</source>
        <translation>Subadresse oder Nutzerdaten wurden nicht übertragen: für Sprache unschädlich</translation>
    </message>
    <message>
        <source>Subscriber absent</source>
        <translation>Teilnehmer abwesend</translation>
    </message>
    <message>
        <source>Suffix %1 (%2) where 1 or 2 is usual: confirm it with the provider</source>
        <translation>Suffix %1 (%2), üblich ist 1 oder 2: beim Anbieter bestätigen lassen</translation>
    </message>
    <message>
        <source>Superseded. %1</source>
        <translation>Ersetzt. %1</translation>
    </message>
    <message>
        <source>Supervisor</source>
        <translation>Aufsicht</translation>
    </message>
    <message>
        <source>Suspended call exists, this identity does not</source>
        <translation>Geparkte Verbindung vorhanden, aber nicht mit dieser Kennung</translation>
    </message>
    <message>
        <source>Switch protocol</source>
        <translation>Protokoll der Vermittlungsstelle</translation>
    </message>
    <message>
        <source>Switching equipment congestion</source>
        <translation>Überlastung der Vermittlung</translation>
    </message>
    <message>
        <source>Symptom</source>
        <translation>Symptom</translation>
    </message>
    <message>
        <source>TEI</source>
        <translation>TEI</translation>
    </message>
    <message>
        <source>TEI %1 as ordered</source>
        <translation>TEI %1 wie bestellt</translation>
    </message>
    <message>
        <source>TEI %1 at %2 is not one that the network gives (64 to 126).</source>
        <translation>%2: TEI %1 ist keiner, den das Netz vergibt (64 bis 126).</translation>
    </message>
    <message>
        <source>TEI %1 at %2 is not the assigned %3.</source>
        <translation>%2: TEI %1 ist nicht der zugewiesene %3.</translation>
    </message>
    <message>
        <source>TEI %1 at %2.</source>
        <translation>%2: TEI %1.</translation>
    </message>
    <message>
        <source>TEI %1 is fixed in terminal %2 too: give each its own</source>
        <translation>TEI %1 ist auch in Endgerät %2 fest: jedem einen eigenen geben</translation>
    </message>
    <message>
        <source>TEI %1 is on two terminals with different SPIDs.</source>
        <translation>TEI %1 haben zwei Endgeräte mit verschiedenen SPIDs.</translation>
    </message>
    <message>
        <source>TEI %1 is one that the network gives: set automatic, or a fixed one of 0 to 63</source>
        <translation>TEI %1 wird vom Netz vergeben: automatisch einstellen oder fest auf 0 bis 63</translation>
    </message>
    <message>
        <source>TEI %1 on a point-to-point line, where 0 is usual: confirm it with the provider</source>
        <translation>TEI %1 an einem Punkt-zu-Punkt-Anschluss, üblich ist 0: beim Anbieter bestätigen lassen</translation>
    </message>
    <message>
        <source>TEI 0 is for point-to-point lines: set automatic, or check the protocol variant</source>
        <translation>TEI 0 gehört zu Punkt-zu-Punkt-Anschlüssen: automatisch einstellen oder die Protokollvariante prüfen</translation>
    </message>
    <message>
        <source>TEI 0, one link for all numbers</source>
        <translation>TEI 0, eine Schicht-2-Verbindung für alle Rufnummern</translation>
    </message>
    <message>
        <source>TEI automatic</source>
        <translation>TEI automatisch</translation>
    </message>
    <message>
        <source>TEI given by the network, 64 to 126</source>
        <translation>TEI vom Netz vergeben, 64 bis 126</translation>
    </message>
    <message>
        <source>TEI ranges of %1</source>
        <translation>TEI-Bereiche nach %1</translation>
    </message>
    <message>
        <source>TID</source>
        <translation>TID</translation>
    </message>
    <message>
        <source>TIME IS UP — read the counters of the test set</source>
        <translation>ZEIT UM – Zähler des Prüfgeräts ablesen</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Kürzel</translation>
    </message>
    <message>
        <source>Take a&amp;long…</source>
        <translation>Mit&amp;geben…</translation>
    </message>
    <message>
        <source>Take along</source>
        <translation>Mitgeben</translation>
    </message>
    <message>
        <source>Take in</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>Take in a bundle</source>
        <translation>Bündel übernehmen</translation>
    </message>
    <message>
        <source>Take in…</source>
        <translation>Übernehmen…</translation>
    </message>
    <message>
        <source>Take it</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>Take it for cause %1, the unspecified one of its class</source>
        <translation>Wie Ursache %1 behandeln, die nicht näher bestimmte ihrer Klasse</translation>
    </message>
    <message>
        <source>Take it from a file…</source>
        <translation>Aus Datei übernehmen …</translation>
    </message>
    <message>
        <source>Take out %1</source>
        <translation>Ausbauen: %1</translation>
    </message>
    <message>
        <source>Take seconds from a file…</source>
        <translation>Sekunden aus Datei übernehmen …</translation>
    </message>
    <message>
        <source>Take the last one back</source>
        <translation>Den letzten zurücknehmen</translation>
    </message>
    <message>
        <source>Take the order in   Ctrl+S</source>
        <translation>Auftrag aufnehmen   Strg+S</translation>
    </message>
    <message>
        <source>Take the repair that is offered</source>
        <translation>Angebotene Korrektur übernehmen</translation>
    </message>
    <message>
        <source>Taken back for all lines of the office: %1</source>
        <translation>Für alle Anschlüsse der Vermittlungsstelle zurückgenommen: %1</translation>
    </message>
    <message>
        <source>Taken back: %1</source>
        <translation>Rückgängig gemacht: %1</translation>
    </message>
    <message>
        <source>Taken in</source>
        <translation>Angenommen</translation>
    </message>
    <message>
        <source>Taken in. Something is to be settled.</source>
        <translation>Übernommen. Etwas ist zu klären.</translation>
    </message>
    <message>
        <source>Takes what belongs to the record and to no step: a change on the line, a note, a self-test of the instrument.</source>
        <translation>Nimmt auf, was zum Auftrag und zu keinem Schritt gehört: eine Änderung an der Leitung, eine Notiz, einen Selbsttest des Messgeräts.</translation>
    </message>
    <message>
        <source>Tap</source>
        <translation>Stichleitung</translation>
    </message>
    <message>
        <source>Taps and missing load coils.</source>
        <translation>Stichleitungen und fehlende Pupinspulen.</translation>
    </message>
    <message>
        <source>Taps, %1</source>
        <translation>Stiche, %1</translation>
    </message>
    <message>
        <source>Telephone</source>
        <translation>Telefon</translation>
    </message>
    <message>
        <source>Telephone for troubles</source>
        <translation>Telefon für Störungen</translation>
    </message>
    <message>
        <source>Temperature of the cable</source>
        <translation>Kabeltemperatur</translation>
    </message>
    <message>
        <source>Temperature of the cable at which a prediction is judged</source>
        <translation>Temperatur des Kabels, bei der eine Vorhersage beurteilt wird</translation>
    </message>
    <message>
        <source>Temporary failure</source>
        <translation>Vorübergehender Fehler</translation>
    </message>
    <message>
        <source>Ten digits, some of them for checking, by which it can be said over the telephone that an order is accepted; the office hears whether that still stands.</source>
        <translation>Zehn Ziffern, einige zur Prüfung, mit denen sich am Telefon sagen lässt, dass ein Auftrag abgenommen ist; das Büro erfährt, ob das noch gilt.</translation>
    </message>
    <message>
        <source>Terminal</source>
        <translation>Endgerät</translation>
    </message>
    <message>
        <source>Terminal %1</source>
        <translation>Endgerät %1</translation>
    </message>
    <message>
        <source>Terminal %1, %2</source>
        <translation>Endgerät %1, %2</translation>
    </message>
    <message>
        <source>Terminal and switch are out of step: restart the terminal</source>
        <translation>Endgerät und Vermittlung sind in verschiedenen Zuständen: das Endgerät neu starten</translation>
    </message>
    <message>
        <source>Terminal and switch signal calls; where there are SPIDs, the switch has accepted the terminal's.</source>
        <translation>Endgerät und Vermittlung signalisieren Anrufe; wo es SPIDs gibt, hat die Vermittlung die des Endgeräts angenommen.</translation>
    </message>
    <message>
        <source>Terminal id %1 (%2) is outside 00 to 62</source>
        <translation>Endgerätekennung %1 (%2) liegt nicht in 00 bis 62</translation>
    </message>
    <message>
        <source>Terminal id %1 (%2) is outside 01 to 08</source>
        <translation>Endgerätekennung %1 (%2) liegt nicht in 01 bis 08</translation>
    </message>
    <message>
        <source>Terminal id %1 (%2) stands for all terminals: confirm it with the provider</source>
        <translation>Endgerätekennung %1 (%2) steht für alle Endgeräte: beim Anbieter bestätigen lassen</translation>
    </message>
    <message>
        <source>Terminal id %1 (%2) where 00 to 62 is usual: confirm it with the provider</source>
        <translation>Endgerätekennung %1 (%2), üblich ist 00 bis 62: beim Anbieter bestätigen lassen</translation>
    </message>
    <message>
        <source>Terminal id %1, but no terminal of this number and sharing id has 01: confirm it with the provider</source>
        <translation>Endgerätekennung %1, aber kein Endgerät mit dieser Nummer und Sharing-Kennung hat 01: beim Anbieter bestätigen lassen</translation>
    </message>
    <message>
        <source>Terminal's place</source>
        <translation>Ort des Endgeräts</translation>
    </message>
    <message>
        <source>Test from the desk</source>
        <translation>Prüfung vom Büro</translation>
    </message>
    <message>
        <source>Test line</source>
        <translation>Prüfanschluss</translation>
    </message>
    <message>
        <source>Test lines</source>
        <translation>Prüfanschlüsse</translation>
    </message>
    <message>
        <source>Test lines of %1, for installers only: %2</source>
        <translation>Prüfanschlüsse von %1, nur für Monteure: %2</translation>
    </message>
    <message>
        <source>Test lines of %1. For installers only: never on a customer's paper.</source>
        <translation>Prüfanschlüsse von %1. Nur für Monteure: nie auf einem Papier für Kunden.</translation>
    </message>
    <message>
        <source>Test lines, unpublished: for installers only</source>
        <translation>Prüfanschlüsse, nicht veröffentlicht: nur für Monteure</translation>
    </message>
    <message>
        <source>Test set at</source>
        <translation>Prüfgerät an</translation>
    </message>
    <message>
        <source>Tested</source>
        <translation>Geprüft</translation>
    </message>
    <message>
        <source>The %1 %2 is not registered.</source>
        <translation>Nicht eingetragen: %1 %2.</translation>
    </message>
    <message>
        <source>The %1 cannot be excepted.</source>
        <translation>Davon gibt es keine Ausnahme: %1.</translation>
    </message>
    <message>
        <source>The %1 certificate numbers of this year are used up.</source>
        <translation>Die %1 Zertifikatsnummern dieses Jahres sind verbraucht.</translation>
    </message>
    <message>
        <source>The %1 failed, cause %2 (%3).</source>
        <translation>Fehlgeschlagen: %1, Ursache %2 (%3).</translation>
    </message>
    <message>
        <source>The %1 failed.</source>
        <translation>Fehlgeschlagen: %1.</translation>
    </message>
    <message>
        <source>The %1 is %3 (%2).</source>
        <translation>%1: %3 (%2).</translation>
    </message>
    <message>
        <source>The %1 of %2 is %3.</source>
        <translation>%1 %2: %3.</translation>
    </message>
    <message>
        <source>The %1 that was recorded does not count.</source>
        <translation>Erfasst, zählt aber nicht: %1.</translation>
    </message>
    <message>
        <source>The %1 was not recorded.</source>
        <translation>Nicht erfasst: %1.</translation>
    </message>
    <message>
        <source>The 0 in front is dialled inside the country only: stored without it, as +%1 %2</source>
        <translation>Die 0 vorn wird nur im Inland gewählt: ohne sie gespeichert, als +%1 %2</translation>
    </message>
    <message>
        <source>The NT is fed by: %1.</source>
        <translation>Den NT speist: %1.</translation>
    </message>
    <message>
        <source>The SPID holds %1, the DN is %2: confirm which one is right</source>
        <translation>Die SPID enthält %1, die DN ist %2: klären, was richtig ist</translation>
    </message>
    <message>
        <source>The SPID holds area code %1, the DN %2: ask whether the SPID kept the old one</source>
        <translation>Die SPID enthält die Vorwahl %1, die DN %2: fragen, ob die SPID die alte behalten hat</translation>
    </message>
    <message>
        <source>The SPID in the terminal against the order, digit by digit, and the protocol variant.</source>
        <translation>Die SPID im Endgerät Ziffer für Ziffer mit dem Auftrag vergleichen, ebenso die Protokollvariante.</translation>
    </message>
    <message>
        <source>The SPID in the terminal against the order, digit by digit.</source>
        <translation>Die SPID im Endgerät gegen den Auftrag, Ziffer für Ziffer.</translation>
    </message>
    <message>
        <source>The SPID is missing: %1 needs one for each terminal, take it from the provider's order</source>
        <translation>Die SPID fehlt: %1 braucht für jedes Endgerät eine, sie steht im Auftrag des Anbieters</translation>
    </message>
    <message>
        <source>The TEI and the protocol variant in the terminal against the order: point-to-point or multipoint.</source>
        <translation>TEI und Protokollvariante im Endgerät mit dem Auftrag vergleichen: Punkt-zu-Punkt oder Mehrpunkt.</translation>
    </message>
    <message>
        <source>The address of a terminal on layer 2: given by the network (64 to 126), or set to a fixed number (0 to 63).</source>
        <translation>Die Adresse eines Endgeräts auf Schicht 2: vom Netz vergeben (64 bis 126) oder fest eingestellt (0 bis 63).</translation>
    </message>
    <message>
        <source>The area code is split</source>
        <translation>Vorwahl wird geteilt</translation>
    </message>
    <message>
        <source>The audit was stopped.</source>
        <translation>Die Prüfung wurde angehalten.</translation>
    </message>
    <message>
        <source>The backup of today could not be made: %1</source>
        <translation>Die heutige Sicherung ist nicht gelungen: %1</translation>
    </message>
    <message>
        <source>The bearer is wrong for this switch: check V.110 or V.120, 56 or 64 kbit/s</source>
        <translation>Der Übermittlungsdienst passt nicht zu dieser Vermittlung: V.110 oder V.120, 56 oder 64 kbit/s prüfen</translation>
    </message>
    <message>
        <source>The bearer that the terminal is set to, also 56 against 64 kbit/s.</source>
        <translation>Der im Endgerät eingestellte Übermittlungsdienst, auch 56 gegen 64 kbit/s.</translation>
    </message>
    <message>
        <source>The box at the customer's between the pair from the office (U) and the wiring to the terminals (S/T).</source>
        <translation>Das Gerät beim Kunden zwischen der Doppelader von der Vermittlungsstelle (U) und der Verkabelung zu den Endgeräten (S/T).</translation>
    </message>
    <message>
        <source>The call left ISDN: listen to the other network's tone</source>
        <translation>Die Verbindung hat das ISDN verlassen: auf den Ton des anderen Netzes hören</translation>
    </message>
    <message>
        <source>The call was forwarded: check that this is wanted</source>
        <translation>Die Verbindung wurde umgeleitet: prüfen, ob das gewollt ist</translation>
    </message>
    <message>
        <source>The called number is out of use: try a test number known to be good</source>
        <translation>Die gerufene Nummer ist außer Betrieb: eine sicher erreichbare Prüfnummer versuchen</translation>
    </message>
    <message>
        <source>The card is clear after the hazard</source>
        <translation>Die Karte ist nach der Gefahr frei</translation>
    </message>
    <message>
        <source>The card that it names read no hazard of this pair or these premises: it closes nothing.</source>
        <translation>Die genannte Karte zeigt keine Gefahr dieser Doppelader oder dieses Grundstücks: damit ist nichts behoben.</translation>
    </message>
    <message>
        <source>The cause came %1.</source>
        <translation>Die Ursache kam %1.</translation>
    </message>
    <message>
        <source>The certificate of the office stands: %1.</source>
        <translation>Das Zertifikat des Büros gilt: %1.</translation>
    </message>
    <message>
        <source>The certificate of this station stands: %1.</source>
        <translation>Das Zertifikat dieser Station gilt: %1.</translation>
    </message>
    <message>
        <source>The channel of a basic-rate line, 16 kbit/s, over which terminal and switch signal; packet data too where it was ordered.</source>
        <translation>Der Kanal eines Basisanschlusses, 16 kbit/s, über den Endgerät und Vermittlung signalisieren; auch Paketdaten, wo sie bestellt sind.</translation>
    </message>
    <message>
        <source>The channel that was asked for does not exist on this line.</source>
        <translation>Den verlangten Kanal gibt es an diesem Anschluss nicht.</translation>
    </message>
    <message>
        <source>The check for dangerous voltage is not complete.</source>
        <translation>Die Prüfung auf gefährliche Spannung ist nicht vollständig.</translation>
    </message>
    <message>
        <source>The circuit of this order with its whole history</source>
        <translation>Der Anschluss dieses Auftrags mit seinem ganzen Verlauf</translation>
    </message>
    <message>
        <source>The circuit was disconnected by order %1.</source>
        <translation>Der Anschluss wurde durch Auftrag %1 gekündigt.</translation>
    </message>
    <message>
        <source>The clock of the run shows a break; it neither passes nor fails.</source>
        <translation>Die Uhr des Messlaufs zeigt eine Unterbrechung; er gilt weder als bestanden noch als nicht bestanden.</translation>
    </message>
    <message>
        <source>The code does not belong to certificate %1.</source>
        <translation>Der Code gehört nicht zum Zertifikat %1.</translation>
    </message>
    <message>
        <source>The columns are read as the last time.</source>
        <translation>Die Spalten werden wie beim letzten Mal gelesen.</translation>
    </message>
    <message>
        <source>The columns are read as you said.</source>
        <translation>Die Spalten werden gelesen wie angegeben.</translation>
    </message>
    <message>
        <source>The columns of %1 have other names than ours. Say what each stands for; it is remembered for files with this header.</source>
        <translation>Die Spalten von %1 heißen anders als unsere. Geben Sie an, wofür jede steht; für Dateien mit dieser Kopfzeile wird es gemerkt.</translation>
    </message>
    <message>
        <source>The conflict holds no longer: more was told since, see what is open now.</source>
        <translation>Der Widerspruch besteht nicht mehr: Seitdem wurde mehr mitgeteilt, sehen Sie nach, was jetzt offen ist.</translation>
    </message>
    <message>
        <source>The conflict is settled already, by %1: %2. If that was wrong, settle it anew.</source>
        <translation>Der Widerspruch ist schon geklärt, durch %1: %2. War das falsch, klären Sie ihn neu.</translation>
    </message>
    <message>
        <source>The content that the records keep of this certificate was altered; verify the history.</source>
        <translation>Der Inhalt, den der Datenbestand von diesem Zertifikat bewahrt, wurde verändert; bitte den Verlauf prüfen.</translation>
    </message>
    <message>
        <source>The counters of the test set were not set back to zero before the test.</source>
        <translation>Die Zähler des Prüfgeräts wurden vor der Messung nicht auf null gesetzt.</translation>
    </message>
    <message>
        <source>The counters were not cleared after the check.</source>
        <translation>Die Zähler wurden nach der Prüfung nicht zurückgesetzt.</translation>
    </message>
    <message>
        <source>The country is not known: type + and the country code, or the number is not recognised where it is typed otherwise</source>
        <translation>Das Land ist nicht bekannt: + und die Landeskennzahl eingeben, sonst wird die Rufnummer in anderer Schreibweise nicht wiedererkannt</translation>
    </message>
    <message>
        <source>The current that reaches a telephone is not as it should be.</source>
        <translation>Der Strom, den ein Telefon erhält, ist nicht, wie er sein soll.</translation>
    </message>
    <message>
        <source>The customer</source>
        <translation>Kunde</translation>
    </message>
    <message>
        <source>The customer's equipment on a basic-rate line; eight of them at most.</source>
        <translation>Ein Gerät des Kunden an einem Basisanschluss; höchstens acht.</translation>
    </message>
    <message>
        <source>The customer's own exchange said so: its settings.</source>
        <translation>Die eigene Nebenstellenanlage des Kunden meldet es: ihre Einstellungen.</translation>
    </message>
    <message>
        <source>The decision is kept with everything that it was made from.</source>
        <translation>Die Entscheidung ist mit allen ihren Grundlagen festgehalten.</translation>
    </message>
    <message>
        <source>The demo was not made: it was stopped.</source>
        <translation>Die Vorführung wurde nicht angelegt: es wurde angehalten.</translation>
    </message>
    <message>
        <source>The detector check before the run was not good: without it the run proves nothing.</source>
        <translation>Die Erkennungsprüfung vor dem Messlauf war nicht gut: ohne sie beweist der Messlauf nichts.</translation>
    </message>
    <message>
        <source>The detector check does not say %1.</source>
        <translation>In der Erkennungsprüfung fehlt: %1.</translation>
    </message>
    <message>
        <source>The directory number is missing</source>
        <translation>Die Rufnummer fehlt</translation>
    </message>
    <message>
        <source>The exception is recorded under the name of %1.</source>
        <translation>Die Ausnahme ist unter dem Namen %1 erfasst.</translation>
    </message>
    <message>
        <source>The export was stopped; nothing is left of it.</source>
        <translation>Die Ausgabe wurde angehalten; von ihr bleibt nichts.</translation>
    </message>
    <message>
        <source>The export was stopped; nothing was written.</source>
        <translation>Die Ausgabe wurde angehalten; nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>The fact is void already.</source>
        <translation>Der Eintrag ist schon ungültig.</translation>
    </message>
    <message>
        <source>The fact that it corrects is of order %1.</source>
        <translation>Der Eintrag, den es berichtigt, gehört zu Auftrag %1.</translation>
    </message>
    <message>
        <source>The fact that it corrects is of the kind “%1”, and the record holds none.</source>
        <translation>Der Eintrag, den es berichtigt, ist von der Art „%1“, und die Erfassung enthält keinen.</translation>
    </message>
    <message>
        <source>The far end's exchange said so: call another number, this line is not at fault.</source>
        <translation>Die Nebenstellenanlage der Gegenseite meldet es: eine andere Rufnummer anrufen, an diesem Anschluss liegt es nicht.</translation>
    </message>
    <message>
        <source>The far end's switch said so: call another number, this line is not at fault.</source>
        <translation>Die Vermittlung der Gegenseite meldet es: eine andere Rufnummer anrufen, an diesem Anschluss liegt es nicht.</translation>
    </message>
    <message>
        <source>The far line blocks such calls</source>
        <translation>Der ferne Anschluss sperrt solche Verbindungen</translation>
    </message>
    <message>
        <source>The far line is down at layer 1 or 2</source>
        <translation>Der ferne Anschluss ist auf Schicht 1 oder 2 ausgefallen</translation>
    </message>
    <message>
        <source>The far terminal is not registered or is switched off</source>
        <translation>Das ferne Endgerät ist nicht angemeldet oder ausgeschaltet</translation>
    </message>
    <message>
        <source>The far terminal refuses the bearer: voice to a data set, or 56 against 64 kbit/s</source>
        <translation>Das ferne Endgerät lehnt den Übermittlungsdienst ab: Sprache zu einem Datengerät oder 56 gegen 64 kbit/s</translation>
    </message>
    <message>
        <source>The feature is not on this line: compare with the order</source>
        <translation>Der Anschluss hat das Leistungsmerkmal nicht: mit dem Auftrag vergleichen</translation>
    </message>
    <message>
        <source>The feed of the line card.</source>
        <translation>Die Speisung der Anschlussbaugruppe.</translation>
    </message>
    <message>
        <source>The file bears no signed claims: it is no certificate, or what it was has been taken out of it.</source>
        <translation>Die Datei trägt keine signierten Angaben: sie ist kein Zertifikat, oder was sie dazu machte, wurde entfernt.</translation>
    </message>
    <message>
        <source>The file for the office</source>
        <translation>Die Datei für das Büro</translation>
    </message>
    <message>
        <source>The file for the van</source>
        <translation>Die Datei für den Wagen</translation>
    </message>
    <message>
        <source>The file in which orders go to a van, or in which its work comes back; signed by the station that wrote it.</source>
        <translation>Die Datei, in der Aufträge zu einem Wagen gehen oder seine Arbeit zurückkommt; signiert von der Station, die sie geschrieben hat.</translation>
    </message>
    <message>
        <source>The file is empty: it was not written to its end. Have it written once more.</source>
        <translation>Die Datei ist leer: Sie wurde nicht zu Ende geschrieben. Lassen Sie sie noch einmal schreiben.</translation>
    </message>
    <message>
        <source>The file is not the one that was issued as %1.</source>
        <translation>Die Datei ist nicht die, die als %1 ausgestellt wurde.</translation>
    </message>
    <message>
        <source>The file was changed after it was signed.</source>
        <translation>Die Datei wurde geändert, nachdem sie signiert war.</translation>
    </message>
    <message>
        <source>The file was damaged on its way: its content is not what was signed. Have it sent once more.</source>
        <translation>Die Datei wurde unterwegs beschädigt: Ihr Inhalt ist nicht das, was unterschrieben wurde. Lassen Sie sie noch einmal schicken.</translation>
    </message>
    <message>
        <source>The file was left exactly as it is; nothing was written to it.</source>
        <translation>Die Datei blieb genau so, wie sie ist; es wurde nichts hineingeschrieben.</translation>
    </message>
    <message>
        <source>The file with its key</source>
        <translation>Die Datei mit seinem Schlüssel</translation>
    </message>
    <message>
        <source>The files are read…</source>
        <translation>Die Dateien werden gelesen…</translation>
    </message>
    <message>
        <source>The filling was stopped; nothing was changed.</source>
        <translation>Das Füllen wurde angehalten; nichts wurde geändert.</translation>
    </message>
    <message>
        <source>The first %1 of %2 are drawn.</source>
        <translation>Gezeichnet sind die ersten %1 von %2.</translation>
    </message>
    <message>
        <source>The first %1 of %2 orders are selected; a filter leads to the others.</source>
        <translation>Die ersten %1 von %2 Aufträgen sind gewählt; ein Filter führt zu den anderen.</translation>
    </message>
    <message>
        <source>The first %1 orders selected</source>
        <translation>Die ersten %1 Aufträge ausgewählt</translation>
    </message>
    <message>
        <source>The first day was %1.</source>
        <translation>Ursprünglicher Tag: %1.</translation>
    </message>
    <message>
        <source>The first day was %1; moved because: %2.</source>
        <translation>Ursprünglicher Tag: %1; umterminiert, weil: %2.</translation>
    </message>
    <message>
        <source>The first serving office</source>
        <translation>Die erste Vermittlungsstelle</translation>
    </message>
    <message>
        <source>The folder is not there or cannot be read.</source>
        <translation>Der Ordner ist nicht da oder lässt sich nicht lesen.</translation>
    </message>
    <message>
        <source>The form</source>
        <translation>Das Formular</translation>
    </message>
    <message>
        <source>The hazard is said to be closed; no clear card was made since.</source>
        <translation>Die Gefahr ist laut Angabe behoben; eine Karte, die keine Gefahr mehr zeigt, fehlt.</translation>
    </message>
    <message>
        <source>The hazard read on %1 is said to be closed; no clear card was made since.</source>
        <translation>Die am %1 gemessene Gefahr ist laut Angabe behoben; eine Karte, die keine Gefahr mehr zeigt, fehlt.</translation>
    </message>
    <message>
        <source>The hazard read on %1 was closed; the card after it is clear.</source>
        <translation>Die am %1 gemessene Gefahr wurde behoben; die Karte danach zeigt keine Gefahr.</translation>
    </message>
    <message>
        <source>The header is not ours: say what its columns stand for.</source>
        <translation>Die Kopfzeile ist nicht unsere: Geben Sie an, wofür die Spalten stehen.</translation>
    </message>
    <message>
        <source>The import was stopped.</source>
        <translation>Das Einlesen wurde angehalten.</translation>
    </message>
    <message>
        <source>The import was stopped; nothing was changed.</source>
        <translation>Das Einlesen wurde angehalten; nichts wurde geändert.</translation>
    </message>
    <message>
        <source>The inside wiring and its terminations: frames are being lost.</source>
        <translation>Die Hausverkabelung und ihre Abschlüsse: Rahmen gehen verloren.</translation>
    </message>
    <message>
        <source>The inside wiring to it.</source>
        <translation>Die Hausverkabelung dorthin.</translation>
    </message>
    <message>
        <source>The inside wiring: both pairs through and not reversed, 100 ohm at the network termination and at the last socket only, each on both pairs.</source>
        <translation>Die Hausverkabelung: beide Doppeladern durchgehend und nicht vertauscht, 100 Ohm nur am NT und an der letzten Dose, jeweils an beiden Doppeladern.</translation>
    </message>
    <message>
        <source>The insulation of the wires was not measured.</source>
        <translation>Die Isolation der Adern wurde nicht gemessen.</translation>
    </message>
    <message>
        <source>The international network said so: call a number at home.</source>
        <translation>Das internationale Netz meldet es: eine Rufnummer im Inland anrufen.</translation>
    </message>
    <message>
        <source>The issuer</source>
        <translation>Der Aussteller</translation>
    </message>
    <message>
        <source>The issuer did not endorse who signed it.</source>
        <translation>Der Aussteller hat den nicht bestätigt, der es unterschrieben hat.</translation>
    </message>
    <message>
        <source>The issuer's key cannot be read: %1 Mend that; or make a new issuer's key too, which whoever checks certificates must be given.</source>
        <translation>Der Schlüssel des Ausstellers lässt sich nicht lesen: %1 Bitte das beheben oder auch ihn neu machen; wer Zertifikate prüft, muss den neuen bekommen.</translation>
    </message>
    <message>
        <source>The issuer's key that endorsed the station's is not in the records; verify the history.</source>
        <translation>Der Schlüssel des Ausstellers, der den der Station beglaubigt hat, ist nicht im Datenbestand; bitte den Verlauf prüfen.</translation>
    </message>
    <message>
        <source>The key is in %1; the office adds the van by it.</source>
        <translation>Der Schlüssel ist in %1; damit fügt das Büro den Wagen hinzu.</translation>
    </message>
    <message>
        <source>The key of %1 (%2) is not on this machine. Put its file back into %3, or have a supervisor make a new one: key renew.</source>
        <translation>Der Schlüssel von %1 (%2) ist nicht auf diesem Rechner. Bitte seine Datei nach %3 zurücklegen oder die Aufsicht einen neuen machen lassen: key renew.</translation>
    </message>
    <message>
        <source>The key of an issuer is told by 32 digits, 0 to 9 and a to f.</source>
        <translation>Der Schlüssel eines Ausstellers wird mit 32 Ziffern angegeben, 0 bis 9 und a bis f.</translation>
    </message>
    <message>
        <source>The key that signed this certificate is not in the records; verify the history.</source>
        <translation>Der Schlüssel, der dieses Zertifikat signiert hat, ist nicht im Datenbestand; bitte den Verlauf prüfen.</translation>
    </message>
    <message>
        <source>The key that the office knows of this station is not its key: write it anew (key export) and have the office add it again.</source>
        <translation>Der Schlüssel, den das Büro von dieser Station kennt, ist nicht der ihre: Schreiben Sie ihn neu heraus und lassen Sie ihn im Büro neu aufnehmen.</translation>
    </message>
    <message>
        <source>The known row of bits that a test set sends, so that each wrong one is seen.</source>
        <translation>Die bekannte Folge von Bits, die ein Messgerät sendet, damit jedes falsche auffällt.</translation>
    </message>
    <message>
        <source>The last day is before the first.</source>
        <translation>Der letzte Tag liegt vor dem ersten.</translation>
    </message>
    <message>
        <source>The last two digits of many SPIDs, which tell apart terminals that share a number.</source>
        <translation>Die letzten beiden Ziffern vieler SPIDs; sie unterscheiden Endgeräte, die eine Rufnummer teilen.</translation>
    </message>
    <message>
        <source>The limits are common practice of the trade.</source>
        <translation>Die Grenzwerte sind im Fach üblich.</translation>
    </message>
    <message>
        <source>The line</source>
        <translation>Leitung</translation>
    </message>
    <message>
        <source>The line and the equipment in the serving office do not run in step.</source>
        <translation>Die Leitung und die Technik in der Vermittlungsstelle sind nicht im Gleichlauf.</translation>
    </message>
    <message>
        <source>The line and the equipment in the serving office run in step.</source>
        <translation>Die Leitung und die Technik in der Vermittlungsstelle sind im Gleichlauf.</translation>
    </message>
    <message>
        <source>The line at the customer's interface</source>
        <translation>Leitung am Übergabepunkt beim Kunden</translation>
    </message>
    <message>
        <source>The line carries no circuit-switched data</source>
        <translation>Der Anschluss führt keine leitungsvermittelten Daten</translation>
    </message>
    <message>
        <source>The line carries no circuit-switched data: no error-rate run is needed.</source>
        <translation>Der Anschluss überträgt keine leitungsvermittelten Daten: ein Messlauf ist nicht nötig.</translation>
    </message>
    <message>
        <source>The line code of the network termination (2B1Q unless the loop is an old one), then the line card in the serving office and whether it is provisioned.</source>
        <translation>Der Leitungscode des NT (2B1Q, außer bei einer alten Anschlussleitung), dann die Anschlussbaugruppe in der Vermittlungsstelle und ob sie eingerichtet ist.</translation>
    </message>
    <message>
        <source>The line hisses or crackles while nobody speaks.</source>
        <translation>Die Leitung rauscht oder knistert, wenn niemand spricht.</translation>
    </message>
    <message>
        <source>The line is down below this layer.</source>
        <translation>Der Anschluss ist unterhalb dieser Schicht ausgefallen.</translation>
    </message>
    <message>
        <source>The line is due on %1.</source>
        <translation>Der Anschluss ist fällig am %1.</translation>
    </message>
    <message>
        <source>The line is good again. Close the trouble.</source>
        <translation>Der Anschluss ist wieder gut. Störung abschließen.</translation>
    </message>
    <message>
        <source>The line is not provisioned for this kind of voice or data</source>
        <translation>Der Anschluss ist für diese Art Sprache oder Daten nicht eingerichtet</translation>
    </message>
    <message>
        <source>The line is not provisioned for what the terminal asks.</source>
        <translation>Der Anschluss ist für das, was das Endgerät verlangt, nicht eingerichtet.</translation>
    </message>
    <message>
        <source>The line is quiet and little disturbs it: the balance says nothing of it</source>
        <translation>Die Leitung ist ruhig und wenig gestört: Die Symmetrie sagt nichts über sie</translation>
    </message>
    <message>
        <source>The line is quiet and little disturbs it: the balance says nothing of it.</source>
        <translation>Die Leitung ist still und wenig gestört: die Symmetrie sagt nichts über sie.</translation>
    </message>
    <message>
        <source>The line is quiet while nobody speaks.</source>
        <translation>Die Leitung ist still, wenn niemand spricht.</translation>
    </message>
    <message>
        <source>The line stays as it is, for the reasons that are named with it.</source>
        <translation>Der Anschluss bleibt, wie er ist, aus den dabei genannten Gründen.</translation>
    </message>
    <message>
        <source>The line was moved by order %1.</source>
        <translation>Der Anschluss wurde durch Auftrag %1 verlegt.</translation>
    </message>
    <message>
        <source>The line was not watched long enough before errors were sent on purpose.</source>
        <translation>Die Leitung wurde nicht lange genug beobachtet, bevor absichtlich Fehler eingefügt wurden.</translation>
    </message>
    <message>
        <source>The lines at one premises; no certificate</source>
        <translation>Die Anschlüsse eines Standorts; kein Zertifikat</translation>
    </message>
    <message>
        <source>The list is the file %1.</source>
        <translation>Die Liste ist die Datei %1.</translation>
    </message>
    <message>
        <source>The machine gives no random numbers.</source>
        <translation>Der Rechner liefert keine Zufallszahlen.</translation>
    </message>
    <message>
        <source>The make-up and the loss at %1 are not known; a resistance alone needs a run without errors beside it.</source>
        <translation>Der Leitungsaufbau und die Dämpfung bei %1 sind nicht bekannt; ein Widerstand allein braucht dazu einen fehlerfreien Messlauf.</translation>
    </message>
    <message>
        <source>The make-up is not known; the measured loss decides.</source>
        <translation>Der Leitungsaufbau ist nicht bekannt; die gemessene Dämpfung entscheidet.</translation>
    </message>
    <message>
        <source>The make-up is not known; the measured resistance and a run without errors stand for the loss.</source>
        <translation>Der Leitungsaufbau ist nicht bekannt; der gemessene Widerstand und ein fehlerfreier Messlauf stehen für die Dämpfung.</translation>
    </message>
    <message>
        <source>The make-up on record explains what was measured at no temperature of the cable from -20 to 140 °F: the measurement decides, and the record is wrong.</source>
        <translation>Der verzeichnete Leitungsaufbau erklärt die Messung bei keiner Kabeltemperatur von -20 bis 140 °F: die Messung entscheidet, und die verzeichneten Angaben sind falsch.</translation>
    </message>
    <message>
        <source>The measured loss at %1</source>
        <translation>Gemessene Dämpfung bei %1</translation>
    </message>
    <message>
        <source>The measured loss at %1 of %2 is above the limit of %3</source>
        <translation>Die gemessene Dämpfung bei %1 von %2 liegt über dem Grenzwert von %3</translation>
    </message>
    <message>
        <source>The measured resistance</source>
        <translation>Gemessener Widerstand</translation>
    </message>
    <message>
        <source>The meter of the safety card is not judged by its calibration.</source>
        <translation>Das Messgerät der Sicherheitskarte wird nicht nach seiner Kalibrierung beurteilt.</translation>
    </message>
    <message>
        <source>The meter was not proved on a known source.</source>
        <translation>Das Messgerät wurde nicht an einer bekannten Quelle geprüft.</translation>
    </message>
    <message>
        <source>The meter was not proved on a known voltage before.</source>
        <translation>Das Messgerät wurde vorher nicht an einer bekannten Spannung geprüft.</translation>
    </message>
    <message>
        <source>The network announced %1, which is not the number of this pair.</source>
        <translation>Das Netz sagte %1 an, und das ist nicht die Rufnummer dieser Doppelader.</translation>
    </message>
    <message>
        <source>The network announced %1.</source>
        <translation>Das Netz sagte %1 an.</translation>
    </message>
    <message>
        <source>The network announced another number on this pair than the one ordered.</source>
        <translation>Das Netz sagte auf dieser Doppelader eine andere Rufnummer an als die bestellte.</translation>
    </message>
    <message>
        <source>The network announced the service %1, which the order does not grant.</source>
        <translation>Das Netz sagte den Dienst %1 an, den der Auftrag nicht gewährt.</translation>
    </message>
    <message>
        <source>The network itself cannot serve the line now.</source>
        <translation>Das Netz selbst kann den Anschluss jetzt nicht bedienen.</translation>
    </message>
    <message>
        <source>The network termination (NT) in the error test: it was made on the pair itself.</source>
        <translation>Der Netzabschluss (NT) in der Fehlermessung: Sie wurde an der Doppelader selbst gemacht.</translation>
    </message>
    <message>
        <source>The network termination and the terminal do not see each other on the inside wiring.</source>
        <translation>NT und Endgerät sehen einander auf der Hausverkabelung nicht.</translation>
    </message>
    <message>
        <source>The network termination does not reach synchronisation on the pair.</source>
        <translation>Der NT erreicht auf der Doppelader keinen Gleichlauf.</translation>
    </message>
    <message>
        <source>The newest %1 of %2 are drawn.</source>
        <translation>Gezeichnet sind die neuesten %1 von %2.</translation>
    </message>
    <message>
        <source>The newest backup</source>
        <translation>Die neueste Sicherung</translation>
    </message>
    <message>
        <source>The number alone, without terminal id: confirm it with the provider%1</source>
        <translation>Nur die Nummer, ohne Endgerätekennung: beim Anbieter bestätigen lassen%1</translation>
    </message>
    <message>
        <source>The number by which the network says why a call, or the start of a terminal, failed.</source>
        <translation>Die Zahl, mit der das Netz sagt, warum ein Anruf oder der Start eines Endgeräts scheiterte.</translation>
    </message>
    <message>
        <source>The number is not one of the station whose key signed.</source>
        <translation>Die Nummer ist keine der Station, deren Schlüssel signiert hat.</translation>
    </message>
    <message>
        <source>The number moved to another carrier: dial again, report the routing</source>
        <translation>Die Rufnummer ist zu einem anderen Netzbetreiber gewechselt: neu wählen, die Leitweglenkung melden</translation>
    </message>
    <message>
        <source>The number of your line, as it is dialled.</source>
        <translation>Die Rufnummer Ihres Anschlusses, wie sie gewählt wird.</translation>
    </message>
    <message>
        <source>The number that is dialled to reach the line.</source>
        <translation>Die Nummer, die man wählt, um den Anschluss zu erreichen.</translation>
    </message>
    <message>
        <source>The number that the network announced on this pair is the number ordered.</source>
        <translation>Die Rufnummer, die das Netz auf dieser Doppelader ansagte, ist die bestellte.</translation>
    </message>
    <message>
        <source>The number that the switch or the test set shows when a call or a layer fails.</source>
        <translation>Die Zahl, die Vermittlung oder Prüfgerät zeigt, wenn eine Verbindung oder Schicht scheitert.</translation>
    </message>
    <message>
        <source>The numbers and identifiers are well formed, and no other line in these records has them.</source>
        <translation>Die Rufnummern und Kennungen sind richtig gebildet, und kein anderer Anschluss in diesem Datenbestand hat sie.</translation>
    </message>
    <message>
        <source>The numbers and identifiers were not checked.</source>
        <translation>Die Rufnummern und Kennungen wurden nicht geprüft.</translation>
    </message>
    <message>
        <source>The numbers or identifiers of the line are others than they were.</source>
        <translation>Die Nummern oder Kennungen des Anschlusses sind andere als vorher.</translation>
    </message>
    <message>
        <source>The office</source>
        <translation>Das Büro</translation>
    </message>
    <message>
        <source>The office %1 is in the register.</source>
        <translation>Die Vermittlungsstelle %1 ist eingetragen.</translation>
    </message>
    <message>
        <source>The office wrote this after %1, which the clock here says it is: set the clock right before anything is measured.</source>
        <translation>Das Büro schrieb dies später als %1, was die Uhr hier anzeigt: Stellen Sie die Uhr, bevor etwas gemessen wird.</translation>
    </message>
    <message>
        <source>The one pair between the serving office and the NT.</source>
        <translation>Die eine Doppelader zwischen Vermittlungsstelle und NT.</translation>
    </message>
    <message>
        <source>The order cannot be read anew: %1. What is shown is older.</source>
        <translation>Der Auftrag lässt sich nicht neu lesen: %1. Gezeigt wird ein älterer Stand.</translation>
    </message>
    <message>
        <source>The order grants no service that a call could show.</source>
        <translation>Der Auftrag gewährt keinen Dienst, den ein Anruf nachweisen könnte.</translation>
    </message>
    <message>
        <source>The order has no due date (YYYY-MM-DD).</source>
        <translation>Der Auftrag hat keinen Fälligkeitstag (JJJJ-MM-TT).</translation>
    </message>
    <message>
        <source>The order has no number.</source>
        <translation>Der Auftrag hat keine Nummer.</translation>
    </message>
    <message>
        <source>The order is %1.</source>
        <translation>Der Auftrag ist %1.</translation>
    </message>
    <message>
        <source>The order is completed: its numbers are working now.</source>
        <translation>Der Auftrag ist abgeschlossen: Seine Rufnummern sind jetzt in Betrieb.</translation>
    </message>
    <message>
        <source>The order is malformed.</source>
        <translation>Der Auftrag ist fehlerhaft.</translation>
    </message>
    <message>
        <source>The order is no longer open.</source>
        <translation>Der Auftrag ist nicht mehr offen.</translation>
    </message>
    <message>
        <source>The order lacks the feature: check the package</source>
        <translation>Das Leistungsmerkmal fehlt im Auftrag: das Paket prüfen</translation>
    </message>
    <message>
        <source>The order names no circuit.</source>
        <translation>Der Auftrag nennt keinen Anschluss.</translation>
    </message>
    <message>
        <source>The order names no customer.</source>
        <translation>Der Auftrag nennt keinen Kunden.</translation>
    </message>
    <message>
        <source>The order names no serving office.</source>
        <translation>Der Auftrag nennt keine Vermittlungsstelle.</translation>
    </message>
    <message>
        <source>The order says %1: what was measured by other values never counts.</source>
        <translation>Im Auftrag steht %1: Was mit anderen Werten gemessen wurde, zählt nie.</translation>
    </message>
    <message>
        <source>The order was changed here and in the office; it stays as it is here until the office has decided.</source>
        <translation>Der Auftrag wurde hier und im Büro geändert; er bleibt hier, wie er ist, bis das Büro entschieden hat.</translation>
    </message>
    <message>
        <source>The order's services against what the serving office has built on the line.</source>
        <translation>Die Dienste des Auftrags mit dem vergleichen, was die Vermittlungsstelle am Anschluss eingerichtet hat.</translation>
    </message>
    <message>
        <source>The orders are out at station %1, and the file is missing: %2. The same command writes it again.</source>
        <translation>Die Aufträge sind bei Station %1, und die Datei fehlt: %2. Derselbe Befehl schreibt sie noch einmal.</translation>
    </message>
    <message>
        <source>The orders stay with this van</source>
        <translation>Die Aufträge bleiben bei diesem Wagen</translation>
    </message>
    <message>
        <source>The other end is in use; is additional call offering provisioned?</source>
        <translation>Die Gegenseite ist besetzt; ist Anklopfen eingerichtet?</translation>
    </message>
    <message>
        <source>The others at these premises too</source>
        <translation>Auch die anderen auf diesem Grundstück</translation>
    </message>
    <message>
        <source>The pair from the serving office to the customer, with all that is joined to it.</source>
        <translation>Die Doppelader von der Vermittlungsstelle zum Kunden, mit allem, was daran hängt.</translation>
    </message>
    <message>
        <source>The pair is drawn here as you type its elements.</source>
        <translation>Hier wird die Doppelader gezeichnet, während Sie ihre Elemente eingeben.</translation>
    </message>
    <message>
        <source>The pair of order %1 names no cable: CABLE-PAIR, as 17-204.</source>
        <translation>Die Doppelader des Auftrags %1 nennt kein Kabel: KABEL-DOPPELADER, etwa 17-204.</translation>
    </message>
    <message>
        <source>The pair of wires from the serving office is fit for this service, near the limit.</source>
        <translation>Die Doppelader von der Vermittlungsstelle ist für diesen Dienst geeignet, nahe am Grenzwert.</translation>
    </message>
    <message>
        <source>The pair of wires from the serving office is fit for this service.</source>
        <translation>Die Doppelader von der Vermittlungsstelle ist für diesen Dienst geeignet.</translation>
    </message>
    <message>
        <source>The pair of wires from the serving office is not fit for this service.</source>
        <translation>Die Doppelader von der Vermittlungsstelle ist für diesen Dienst nicht geeignet.</translation>
    </message>
    <message>
        <source>The pair was %1 and is %2 now.</source>
        <translation>Die Doppelader war %1 und ist jetzt %2.</translation>
    </message>
    <message>
        <source>The pair was checked for dangerous voltage before any work; no reading was above the stop limits.</source>
        <translation>Die Doppelader wurde vor jeder Arbeit auf gefährliche Spannung geprüft; kein Messwert lag über den Stoppgrenzen.</translation>
    </message>
    <message>
        <source>The pair.</source>
        <translation>Die Doppelader.</translation>
    </message>
    <message>
        <source>The pair: is it the one on the order, free of load coils, with loss and resistance in limits? Wait 15 s after a cold start before calling it down.</source>
        <translation>Die Doppelader: ist es die des Auftrags, ohne Pupinspulen, Dämpfung und Widerstand in den Grenzwerten? Nach einem Kaltstart 15 s warten, bevor sie als ausgefallen gilt.</translation>
    </message>
    <message>
        <source>The paper has none of the pages that were chosen.</source>
        <translation>Das Papier hat keine der gewählten Seiten.</translation>
    </message>
    <message>
        <source>The paper of a certificate is missing.</source>
        <translation>Das Papier eines Zertifikats fehlt.</translation>
    </message>
    <message>
        <source>The paper of certificate %1 is not in it: %2</source>
        <translation>Das Papier des Zertifikats %1 ist nicht dabei: %2</translation>
    </message>
    <message>
        <source>The pattern goes on some bits earlier or later than it should, for two clocks differ or the call took another way.</source>
        <translation>Das Muster geht einige Bits früher oder später weiter, als es sollte, weil zwei Takte abweichen oder der Anruf einen anderen Weg nahm.</translation>
    </message>
    <message>
        <source>The place of work is safe: footing, ladder, traffic, eyes, power lines, air of a manhole; span power is off and tagged; somebody knows where I am.</source>
        <translation>Die Arbeitsstelle ist sicher: Stand, Leiter, Verkehr, Augen, Starkstromleitungen, Schachtluft; die Fernspeisung ist abgeschaltet und gekennzeichnet; jemand weiß, wo ich bin.</translation>
    </message>
    <message>
        <source>The protocol variant "%1" is not known.</source>
        <translation>Die Protokollvariante „%1“ ist nicht bekannt.</translation>
    </message>
    <message>
        <source>The protocol variant is missing</source>
        <translation>Die Protokollvariante fehlt</translation>
    </message>
    <message>
        <source>The protocol variant is missing: write %1</source>
        <translation>Die Protokollvariante fehlt: %1 schreiben</translation>
    </message>
    <message>
        <source>The protocol variant set in the terminal against the order.</source>
        <translation>Die im Endgerät eingestellte Protokollvariante mit dem Auftrag vergleichen.</translation>
    </message>
    <message>
        <source>The protocol variant set in the terminal.</source>
        <translation>Die im Endgerät eingestellte Protokollvariante.</translation>
    </message>
    <message>
        <source>The qualification was stopped.</source>
        <translation>Die Vorprüfung wurde angehalten.</translation>
    </message>
    <message>
        <source>The range %1 does not hold the head number %2.</source>
        <translation>Der Nummernbereich %1 enthält die Kopfnummer %2 nicht.</translation>
    </message>
    <message>
        <source>The range belongs to a head number, and the order has none.</source>
        <translation>Der Nummernbereich gehört zu einer Kopfnummer, und der Auftrag hat keine.</translation>
    </message>
    <message>
        <source>The record in the file is not the one that was signed.</source>
        <translation>Der Datensatz in der Datei ist nicht der, der signiert wurde.</translation>
    </message>
    <message>
        <source>The record in the file is the one that was signed, but its pages are signed with the key %1, which is none of those given, nor endorsed by one of them: ask the issuer for its present keys.</source>
        <translation>Der Datensatz in der Datei ist der, der signiert wurde, aber ihre Seiten sind mit dem Schlüssel %1 signiert, der keiner der angegebenen ist und von keinem von ihnen beglaubigt: bitte den Aussteller nach seinen jetzigen Schlüsseln fragen.</translation>
    </message>
    <message>
        <source>The record in the file is the one that was signed, but the file around it was changed or saved anew: do not trust its pages, compare them.</source>
        <translation>Der Datensatz in der Datei ist der, der signiert wurde, aber die Datei darum wurde geändert oder neu gespeichert: bitte ihren Seiten nicht trauen, sondern vergleichen.</translation>
    </message>
    <message>
        <source>The record of the pair does not agree with what was measured, and is to be mended.</source>
        <translation>Die verzeichneten Angaben zur Doppelader stimmen nicht mit der Messung überein und sind zu berichtigen.</translation>
    </message>
    <message>
        <source>The record of this certificate is in English, and counts; this is the same in another language.</source>
        <translation>Der Datensatz dieses Zertifikats ist englisch, und er gilt; dies ist dasselbe auf Deutsch.</translation>
    </message>
    <message>
        <source>The records could not be opened</source>
        <translation>Der Datenbestand ließ sich nicht öffnen</translation>
    </message>
    <message>
        <source>The records do not say who issues this certificate.</source>
        <translation>Die Aufzeichnungen nennen nicht, wer dieses Zertifikat ausstellt.</translation>
    </message>
    <message>
        <source>The records know no certificate %1.</source>
        <translation>Der Datenbestand kennt kein Zertifikat %1.</translation>
    </message>
    <message>
        <source>The records lack the decision that it attests; verify the history.</source>
        <translation>Dem Datenbestand fehlt die Entscheidung, die es bezeugt; bitte den Verlauf prüfen.</translation>
    </message>
    <message>
        <source>The records were backed up.</source>
        <translation>Der Datenbestand wurde gesichert.</translation>
    </message>
    <message>
        <source>The refused rows are in %1.</source>
        <translation>Die abgelehnten Zeilen stehen in %1.</translation>
    </message>
    <message>
        <source>The repair is due on %1.</source>
        <translation>Die Entstörung ist fällig am %1.</translation>
    </message>
    <message>
        <source>The report is in %1.</source>
        <translation>Die Auswertung steht in %1.</translation>
    </message>
    <message>
        <source>The ringing signal is just strong enough.</source>
        <translation>Das Rufsignal ist gerade stark genug.</translation>
    </message>
    <message>
        <source>The ringing signal is strong enough.</source>
        <translation>Das Rufsignal ist stark genug.</translation>
    </message>
    <message>
        <source>The ringing signal is too weak.</source>
        <translation>Das Rufsignal ist zu schwach.</translation>
    </message>
    <message>
        <source>The ringing signal was not measured.</source>
        <translation>Das Rufsignal wurde nicht gemessen.</translation>
    </message>
    <message>
        <source>The ringing supply; then how many telephones ring at once.</source>
        <translation>Die Rufstromquelle; dann, wie viele Telefone zugleich klingeln.</translation>
    </message>
    <message>
        <source>The row %1</source>
        <translation>Die Zeile %1</translation>
    </message>
    <message>
        <source>The row %1.</source>
        <translation>Die Zeile %1.</translation>
    </message>
    <message>
        <source>The rule of %1 does not say the SPID of this terminal: the provider's order paper does.</source>
        <translation>Die Regel von %1 ergibt die SPID dieses Endgeräts nicht: sie steht im Auftragsschreiben des Anbieters.</translation>
    </message>
    <message>
        <source>The run at S/T failed, and the customer gets S/T: a run at U does not stand for it.</source>
        <translation>Der Messlauf an S/T wurde nicht bestanden, und der Kunde erhält S/T: ein Messlauf an U ersetzt ihn nicht.</translation>
    </message>
    <message>
        <source>The run does not say %1.</source>
        <translation>Im Messlauf fehlt: %1.</translation>
    </message>
    <message>
        <source>The run is over its limits: %1.</source>
        <translation>Der Messlauf liegt über seinen Grenzwerten: %1.</translation>
    </message>
    <message>
        <source>The run lasted %1 s; at least %2 s are needed.</source>
        <translation>Der Messlauf dauerte %1 s; nötig sind mindestens %2 s.</translation>
    </message>
    <message>
        <source>The run of order %1 is over. Read the counters of the test set and record it.</source>
        <translation>Der Messlauf zu Auftrag %1 ist zu Ende. Zähler des Prüfgeräts ablesen und erfassen.</translation>
    </message>
    <message>
        <source>The run on %1 failed, and nothing says what was done since.</source>
        <translation>Der Messlauf auf %1 wurde nicht bestanden, und nichts sagt, was seither getan wurde.</translation>
    </message>
    <message>
        <source>The run over two channels is two calls, one on each.</source>
        <translation>Der Messlauf über zwei Kanäle besteht aus zwei Verbindungen, einer auf jedem.</translation>
    </message>
    <message>
        <source>The run was made at the S/T interface, through the NT.</source>
        <translation>Der Messlauf wurde an der S/T-Schnittstelle gemacht, durch den NT.</translation>
    </message>
    <message>
        <source>The run was made at the U interface.</source>
        <translation>Der Messlauf wurde an der U-Schnittstelle gemacht.</translation>
    </message>
    <message>
        <source>The run was made behind the NT (at S/T).</source>
        <translation>Der Messlauf wurde hinter dem NT gemacht (an S/T).</translation>
    </message>
    <message>
        <source>The run was made on the pair itself, before the NT (at U).</source>
        <translation>Der Messlauf wurde an der Doppelader selbst gemacht, vor dem NT (an U).</translation>
    </message>
    <message>
        <source>The run was made with a fixed pattern, which shows no slip and no wrong channel: it can fail a line, never pass it.</source>
        <translation>Der Messlauf wurde mit einem festen Muster gemacht, das weder Schlupf noch einen falschen Kanal zeigt: er kann gegen eine Leitung sprechen, nie für sie.</translation>
    </message>
    <message>
        <source>The run was stopped early, after %1 s; it neither passes nor fails.</source>
        <translation>Der Messlauf wurde vorzeitig beendet, nach %1 s; er gilt weder als bestanden noch als nicht bestanden.</translation>
    </message>
    <message>
        <source>The safety card is incomplete; %1.</source>
        <translation>Die Sicherheitskarte ist unvollständig; %1.</translation>
    </message>
    <message>
        <source>The safety card of %1 says that the office was disconnected, and this shows that it feeds the pair: record “changed: feed” and a new card, or correct the card.</source>
        <translation>Die Sicherheitskarte von %1 sagt, dass die Vermittlungsstelle abgetrennt war, und dies zeigt, dass sie die Doppelader speist: „Änderung: Speisung“ und eine neue Karte erfassen oder die Karte berichtigen.</translation>
    </message>
    <message>
        <source>The same SPID as terminal %1: each terminal has its own</source>
        <translation>Dieselbe SPID wie Endgerät %1: jedes Endgerät hat eine eigene</translation>
    </message>
    <message>
        <source>The same number as terminal %1</source>
        <translation>Dieselbe Rufnummer wie Endgerät %1</translation>
    </message>
    <message>
        <source>The same number as terminal %1: a point-to-point line needs it once</source>
        <translation>Dieselbe Rufnummer wie Endgerät %1: ein Punkt-zu-Punkt-Anschluss braucht sie einmal</translation>
    </message>
    <message>
        <source>The sample is in %1.</source>
        <translation>Das Muster steht in %1.</translation>
    </message>
    <message>
        <source>The search failed.</source>
        <translation>Die Suche ist fehlgeschlagen.</translation>
    </message>
    <message>
        <source>The search looks through numbers, names, circuits and identifiers.</source>
        <translation>Die Suche erfasst Nummern, Namen, Anschlüsse und Kennungen.</translation>
    </message>
    <message>
        <source>The self-call was made from %1 to %2, and %3 is no number of this order.</source>
        <translation>Der Selbstanruf ging von %1 an %2, und %3 ist keine Rufnummer dieses Auftrags.</translation>
    </message>
    <message>
        <source>The self-call was made from %1 to itself; it needs two numbers that may call each other.</source>
        <translation>Der Selbstanruf ging von %1 an dieselbe Rufnummer; nötig sind zwei, die einander anrufen dürfen.</translation>
    </message>
    <message>
        <source>The services of the order against what the office built.</source>
        <translation>Die Dienste des Auftrags gegen das, was das Büro eingerichtet hat.</translation>
    </message>
    <message>
        <source>The serving office did not recognise the identifier of a terminal.</source>
        <translation>Die Vermittlungsstelle hat die Kennung eines Endgeräts nicht erkannt.</translation>
    </message>
    <message>
        <source>The serving office feeds the line with its usual voltage.</source>
        <translation>Die Vermittlungsstelle speist die Leitung mit ihrer üblichen Spannung.</translation>
    </message>
    <message>
        <source>The serving office feeds the line with little voltage.</source>
        <translation>Die Vermittlungsstelle speist die Leitung mit geringer Spannung.</translation>
    </message>
    <message>
        <source>The serving office recognised the identifier of each terminal.</source>
        <translation>Die Vermittlungsstelle hat die Kennung jedes Endgeräts erkannt.</translation>
    </message>
    <message>
        <source>The serving office: report the cause and the time; try again first.</source>
        <translation>Die Vermittlungsstelle: Ursache und Uhrzeit melden; vorher noch einmal versuchen.</translation>
    </message>
    <message>
        <source>The serving switch said so: what the office has built.</source>
        <translation>Die eigene Vermittlung meldet es: was die Vermittlungsstelle eingerichtet hat.</translation>
    </message>
    <message>
        <source>The short name that a set of records draws for itself, a van's or the office's; it stands in the numbers of the certificates that are issued there.</source>
        <translation>Der kurze Name, den ein Datenbestand sich selbst zulost, der eines Wagens oder der des Büros; er steht in den Nummern der Zertifikate, die dort ausgestellt werden.</translation>
    </message>
    <message>
        <source>The signature does not fit what the certificate claims.</source>
        <translation>Die Signatur passt nicht zu den Angaben des Zertifikats.</translation>
    </message>
    <message>
        <source>The switch did not accept the terminal's SPID.</source>
        <translation>Die Vermittlung hat die SPID des Endgeräts nicht angenommen.</translation>
    </message>
    <message>
        <source>The switch does not know what the terminal sent: at start-up, a wrong SPID.</source>
        <translation>Die Vermittlung kennt nicht, was das Endgerät gesendet hat: beim Start eine falsche SPID.</translation>
    </message>
    <message>
        <source>The switch is converted</source>
        <translation>Vermittlung wird umgestellt</translation>
    </message>
    <message>
        <source>The tag %1 is known under another key (%2). If the van has a new key, say so; if not, find out who wrote this file.</source>
        <translation>Das Kürzel %1 ist unter einem anderen Schlüssel bekannt (%2). Hat der Wagen einen neuen, sagen Sie das dazu; wenn nicht, klären Sie, wer diese Datei geschrieben hat.</translation>
    </message>
    <message>
        <source>The tag %1 is that of station %2.</source>
        <translation>Das Kürzel %1 ist das der Station %2.</translation>
    </message>
    <message>
        <source>The telephone did not ring when it was called.</source>
        <translation>Das Telefon klingelte nicht, als es angerufen wurde.</translation>
    </message>
    <message>
        <source>The telephone rings when it is called.</source>
        <translation>Das Telefon klingelt, wenn es angerufen wird.</translation>
    </message>
    <message>
        <source>The terminal and the switch are out of step.</source>
        <translation>Endgerät und Vermittlung sind in verschiedenen Zuständen.</translation>
    </message>
    <message>
        <source>The terminal and the switch do not speak the same protocol variant.</source>
        <translation>Endgerät und Vermittlung sprechen nicht dieselbe Protokollvariante.</translation>
    </message>
    <message>
        <source>The terminal does not answer SETUP: check its power, its SPID and its TEI</source>
        <translation>Das Endgerät antwortet nicht auf SETUP: Stromversorgung, SPID und TEI prüfen</translation>
    </message>
    <message>
        <source>The terminal does not answer.</source>
        <translation>Das Endgerät antwortet nicht.</translation>
    </message>
    <message>
        <source>The terminal has a TEI and speaks with the switch over the D channel.</source>
        <translation>Das Endgerät hat einen TEI und spricht über den D-Kanal mit der Vermittlung.</translation>
    </message>
    <message>
        <source>The terminal has a TEI, but the data link is not established.</source>
        <translation>Das Endgerät hat einen TEI, aber die Schicht-2-Verbindung ist nicht aufgebaut.</translation>
    </message>
    <message>
        <source>The terminal refused: check call screening, DN and bearer service set in it</source>
        <translation>Das Endgerät hat abgelehnt: Anruffilter, DN und Übermittlungsdienst darin prüfen</translation>
    </message>
    <message>
        <source>The terminal was given no TEI.</source>
        <translation>Das Endgerät hat keinen TEI bekommen.</translation>
    </message>
    <message>
        <source>The test sets are known, and were within their calibration, or need none.</source>
        <translation>Die Prüfgeräte sind bekannt und waren gültig kalibriert oder brauchen keine Kalibrierung.</translation>
    </message>
    <message>
        <source>The test sets are known, and were within their calibration.</source>
        <translation>Die Prüfgeräte sind bekannt und waren gültig kalibriert.</translation>
    </message>
    <message>
        <source>The text is signed as it stands; compare it with the paper.</source>
        <translation>Der Text ist so signiert, wie er dasteht; bitte mit dem Papier vergleichen.</translation>
    </message>
    <message>
        <source>The texts of the licences come with each of these packages, on Debian in /usr/share/doc.</source>
        <translation>Die Texte der Lizenzen liegen jedem dieser Pakete bei, unter Debian in /usr/share/doc.</translation>
    </message>
    <message>
        <source>The totals contradict each other: %1.</source>
        <translation>Die Summen widersprechen einander: %1.</translation>
    </message>
    <message>
        <source>The totals contradict each other: %1; read the test set again.</source>
        <translation>Die Summen widersprechen einander: %1; das Prüfgerät erneut ablesen.</translation>
    </message>
    <message>
        <source>The trouble is closed, and the line is good.</source>
        <translation>Die Störung ist abgeschlossen, und der Anschluss ist gut.</translation>
    </message>
    <message>
        <source>The trouble is closed. Not shown: %1</source>
        <translation>Die Störung ist abgeschlossen. Nicht nachgewiesen: %1</translation>
    </message>
    <message>
        <source>The two wires are alike enough to keep hum out of a call.</source>
        <translation>Die beiden Adern sind gleich genug, um Brummen aus einem Gespräch fernzuhalten.</translation>
    </message>
    <message>
        <source>The two wires are connected the right way round.</source>
        <translation>Die beiden Adern sind richtig herum angeschlossen.</translation>
    </message>
    <message>
        <source>The two wires are connected the wrong way round.</source>
        <translation>Die beiden Adern sind vertauscht angeschlossen.</translation>
    </message>
    <message>
        <source>The two wires are just alike enough to keep hum out of a call.</source>
        <translation>Die beiden Adern sind gerade gleich genug, um Brummen aus einem Gespräch fernzuhalten.</translation>
    </message>
    <message>
        <source>The two wires are not alike enough to keep hum out of a call.</source>
        <translation>Die beiden Adern sind nicht gleich genug, um Brummen aus einem Gespräch fernzuhalten.</translation>
    </message>
    <message>
        <source>The van made an order %1 of its own, of circuit %2, and here it is of circuit %3. Enter it in the van under its right number, record its work there anew, cancel the wrong one, and bring it back.</source>
        <translation>Der Wagen hat einen eigenen Auftrag %1 für Leitung %2 angelegt, und hier ist er für Leitung %3. Geben Sie ihn im Wagen unter seiner richtigen Nummer ein, halten Sie die Arbeit dort noch einmal fest, stornieren Sie den falschen, und bringen Sie ihn zurück.</translation>
    </message>
    <message>
        <source>The van worked on it as it was before, and nobody has decided: until then it stays in the van as it is there. Settle that first.</source>
        <translation>Der Wagen hat nach den vorigen Angaben daran gearbeitet, und niemand hat entschieden: Bis dahin bleibt er im Wagen, wie er dort ist. Klären Sie das zuerst.</translation>
    </message>
    <message>
        <source>The variant that the serving office's switch gives to the line.</source>
        <translation>Die Variante, die die Vermittlung dem Anschluss gibt.</translation>
    </message>
    <message>
        <source>The variant that the serving office's switch gives to the line; then restart the terminal.</source>
        <translation>Die Variante, die die Vermittlung dem Anschluss gibt; dann das Endgerät neu starten.</translation>
    </message>
    <message>
        <source>The visits of %1 from %2 and from %3 overlap.</source>
        <translation>Die Einsätze von %1 ab %2 und ab %3 überschneiden sich.</translation>
    </message>
    <message>
        <source>The visits of %1 from %2 and, at the premises of order %4, from %3 overlap.</source>
        <translation>Die Einsätze von %1 ab %2 und, beim Auftrag %4, ab %3 überschneiden sich.</translation>
    </message>
    <message>
        <source>The voltage of the serving office is not as it should be.</source>
        <translation>Die Spannung der Vermittlungsstelle ist nicht, wie sie sein soll.</translation>
    </message>
    <message>
        <source>The voltage of the serving office was not measured.</source>
        <translation>Die Spannung der Vermittlungsstelle wurde nicht gemessen.</translation>
    </message>
    <message>
        <source>The voltages do not fit each other: an open wire, a leak or an open ground is to be cleared.</source>
        <translation>Die Spannungen passen nicht zusammen: ein Aderbruch, eine Ableitung oder eine offene Erde ist zu beseitigen.</translation>
    </message>
    <message>
        <source>The voltages read on the pair do not fit each other: the check for dangerous voltage is to be made again.</source>
        <translation>Die an der Doppelader gemessenen Spannungen passen nicht zueinander: die Prüfung auf gefährliche Spannung ist zu wiederholen.</translation>
    </message>
    <message>
        <source>The watched folder: %1</source>
        <translation>Der überwachte Ordner: %1</translation>
    </message>
    <message>
        <source>The wires are just well enough insulated from each other and from ground.</source>
        <translation>Die Adern sind gegeneinander und gegen Erde gerade gut genug isoliert.</translation>
    </message>
    <message>
        <source>The wires are well insulated from each other and from ground.</source>
        <translation>Die Adern sind gegeneinander und gegen Erde gut isoliert.</translation>
    </message>
    <message>
        <source>The wires leak current to each other or to ground.</source>
        <translation>Die Adern leiten Strom gegeneinander oder gegen Erde ab.</translation>
    </message>
    <message>
        <source>The wiring behind the NT, two pairs, to which the terminals are connected.</source>
        <translation>Die Verkabelung hinter dem NT, zwei Doppeladern, an der die Endgeräte hängen.</translation>
    </message>
    <message>
        <source>The worst bit error ratio that what was counted leaves possible, with its confidence; the ratio is the estimate, the bound is what a run proves.</source>
        <translation>Das schlechteste Bitfehlerverhältnis, das nach der Zählung noch möglich ist, mit seiner Sicherheit; das Verhältnis ist die Schätzung, die Schranke das, was ein Messlauf beweist.</translation>
    </message>
    <message>
        <source>Their reference</source>
        <translation>Ihr Zeichen</translation>
    </message>
    <message>
        <source>Then</source>
        <translation>Danach</translation>
    </message>
    <message>
        <source>Then, %1</source>
        <translation>Danach, %1</translation>
    </message>
    <message>
        <source>There is no bulk change, or all were taken back.</source>
        <translation>Es gibt keine Sammeländerung, oder alle wurden zurückgenommen.</translation>
    </message>
    <message>
        <source>There is no circuit "%1".</source>
        <translation>Es gibt keinen Anschluss „%1“.</translation>
    </message>
    <message>
        <source>There is no conflict "%1".</source>
        <translation>Es gibt keinen Widerspruch „%1“.</translation>
    </message>
    <message>
        <source>There is no decision "%1".</source>
        <translation>Es gibt keine Entscheidung „%1“.</translation>
    </message>
    <message>
        <source>There is no fact "%1".</source>
        <translation>Es gibt keinen Eintrag „%1“.</translation>
    </message>
    <message>
        <source>There is no installer "%1" in the register.</source>
        <translation>Es gibt keinen Monteur „%1“ im Register.</translation>
    </message>
    <message>
        <source>There is no limit set "%1".</source>
        <translation>Es gibt keinen Grenzwertsatz „%1“.</translation>
    </message>
    <message>
        <source>There is no office "%1" in the register.</source>
        <translation>Es gibt keine Vermittlungsstelle „%1“ im Register.</translation>
    </message>
    <message>
        <source>There is no office "%1".</source>
        <translation>Es gibt keine Vermittlungsstelle „%1“.</translation>
    </message>
    <message>
        <source>There is no order "%1".</source>
        <translation>Es gibt keinen Auftrag „%1“.</translation>
    </message>
    <message>
        <source>There is no person "%1" in the register.</source>
        <translation>Es gibt keine Person „%1“ im Register.</translation>
    </message>
    <message>
        <source>There is no protocol variant "%1"</source>
        <translation>Es gibt keine Protokollvariante „%1“</translation>
    </message>
    <message>
        <source>There is no protocol variant "%1": write %2</source>
        <translation>Es gibt keine Protokollvariante „%1“: %2 schreiben</translation>
    </message>
    <message>
        <source>There is no serving office "%1"; import it first.</source>
        <translation>Die Vermittlungsstelle „%1“ gibt es nicht; erst einlesen.</translation>
    </message>
    <message>
        <source>There is no serving office yet: import one first.</source>
        <translation>Es gibt noch keine Vermittlungsstelle: Zuerst eine einlesen.</translation>
    </message>
    <message>
        <source>There is no station "%1"; van add makes it known.</source>
        <translation>Es gibt keine Station „%1“; der Wagen muss erst aufgenommen werden.</translation>
    </message>
    <message>
        <source>There is nothing to bring back.</source>
        <translation>Es gibt nichts zurückzubringen.</translation>
    </message>
    <message>
        <source>There is nothing to take in.</source>
        <translation>Es gibt nichts zu übernehmen.</translation>
    </message>
    <message>
        <source>There is too little memory to keep a PIN.</source>
        <translation>Der Speicher reicht nicht aus, um eine PIN aufzubewahren.</translation>
    </message>
    <message>
        <source>These are whole records and no bundle.</source>
        <translation>Dies ist ein ganzer Datenbestand und kein Bündel.</translation>
    </message>
    <message>
        <source>These records are an older copy, or were changed: they lack event %1 of station %2, for which this machine signed at %3. A number could be given twice. Put the newer file back; if it is lost, restore from this one (restore FILE), and it becomes a station of its own.</source>
        <translation>Dieser Datenbestand ist eine ältere Kopie oder wurde geändert: ihm fehlt Ereignis %1 der Station %2, für das dieser Rechner um %3 signiert hat. Eine Nummer könnte zweimal vergeben werden. Bitte die neuere Datei zurücklegen; ist sie verloren, aus dieser wiederherstellen (restore FILE), und sie wird eine eigene Station.</translation>
    </message>
    <message>
        <source>These records are no van's: nothing of an office was taken in here.</source>
        <translation>Dies ist kein Datenbestand eines Wagens: Hier wurde nichts von einem Büro übernommen.</translation>
    </message>
    <message>
        <source>These records are open.</source>
        <translation>Dieser Datenbestand ist geöffnet.</translation>
    </message>
    <message>
        <source>These records gave out certificates in their own name already: a van of an office begins with records of its own.</source>
        <translation>Diese Aufzeichnungen haben schon Zertifikate im eigenen Namen ausgestellt: Der Wagen eines Büros beginnt mit eigenen Aufzeichnungen.</translation>
    </message>
    <message>
        <source>These records have a window, which was brought forward.</source>
        <translation>Dieser Datenbestand hat ein Fenster; es wurde nach vorn geholt.</translation>
    </message>
    <message>
        <source>These reminders do not replace training, permits or local code; where they differ, local code and licensed practice prevail. In the United States 29 CFR 1910.268 covers telecommunications work, part 1926 construction; in California title 8 sections 8600 to 8618 ("8 CCR").</source>
        <translation>Diese Hinweise ersetzen weder Ausbildung noch Genehmigungen noch örtliche Vorschriften; wo sie abweichen, gelten die örtlichen Vorschriften und die zugelassene Praxis. In den Vereinigten Staaten regelt 29 CFR 1910.268 die Fernmeldearbeit, Teil 1926 das Bauen; in Kalifornien Titel 8, Abschnitte 8600 bis 8618 („8 CCR“).</translation>
    </message>
    <message>
        <source>They must be in place and to the electrical code in force. Never remove or defeat a ground, not even for a measurement.</source>
        <translation>Sie müssen vorhanden sein und den geltenden Elektrovorschriften entsprechen. Nie eine Erdung entfernen oder umgehen, auch nicht für eine Messung.</translation>
    </message>
    <message>
        <source>They were accepted by exception: who authorised that, and why, stands in the box.</source>
        <translation>Sie wurden mit Ausnahme abgenommen: Wer das erlaubt hat und warum, steht im Kasten.</translation>
    </message>
    <message>
        <source>This changed the order or an entry, and is not settled anew: change the order, or strike the entry out.</source>
        <translation>Dies hat den Auftrag oder einen Eintrag geändert und wird nicht neu geklärt: Ändern Sie den Auftrag, oder streichen Sie den Eintrag.</translation>
    </message>
    <message>
        <source>This file holds keys and no bundle: van add takes it in.</source>
        <translation>Diese Datei enthält Schlüssel und kein Bündel: Damit wird ein Wagen aufgenommen.</translation>
    </message>
    <message>
        <source>This is a PDF, a paper, and no bundle.</source>
        <translation>Dies ist ein PDF, ein Papier, und kein Bündel.</translation>
    </message>
    <message>
        <source>This is no bundle: something else wrote it, for another purpose.</source>
        <translation>Dies ist kein Bündel: Etwas anderes hat es geschrieben, für einen anderen Zweck.</translation>
    </message>
    <message>
        <source>This is no certificate.</source>
        <translation>Dies ist kein Zertifikat.</translation>
    </message>
    <message>
        <source>This is no key that can be sealed to.</source>
        <translation>Das ist kein Schlüssel, für den versiegelt werden kann.</translation>
    </message>
    <message>
        <source>This is no name for a van: it %1.</source>
        <translation>Das ist kein Name für einen Wagen: er %1.</translation>
    </message>
    <message>
        <source>This is no whole bundle: it was cut on its way, or is another kind of file. Have it sent once more.</source>
        <translation>Dies ist kein ganzes Bündel: Es wurde unterwegs abgeschnitten oder ist eine andere Art Datei. Lassen Sie es noch einmal senden.</translation>
    </message>
    <message>
        <source>This is not sealed to the key of this station.</source>
        <translation>Das ist nicht für den Schlüssel dieser Station versiegelt.</translation>
    </message>
    <message>
        <source>This is not the PIN of %1.</source>
        <translation>Das ist nicht die PIN von %1.</translation>
    </message>
    <message>
        <source>This is of an issuer with another key than the one that these records work for. Call the office, and enter the key that you hear; nobody else can say that it is the right one.</source>
        <translation>Dies ist von einem Aussteller mit einem anderen Schlüssel als dem, für den diese Aufzeichnungen arbeiten. Rufen Sie das Büro an und geben Sie den Schlüssel ein, den Sie hören; sonst kann niemand sagen, dass es der richtige ist.</translation>
    </message>
    <message>
        <source>This is the cover of a set and no certificate; verify the files of the certificates that it names.</source>
        <translation>Dies ist das Deckblatt eines Satzes und kein Zertifikat; bitte die Dateien der Zertifikate prüfen, die es nennt.</translation>
    </message>
    <message>
        <source>This is the demo; the next start opens your own records again.</source>
        <translation>Das ist die Demo; der nächste Start öffnet wieder den eigenen Datenbestand.</translation>
    </message>
    <message>
        <source>This is the record of a job and no bundle: record takes it in.</source>
        <translation>Dies ist ein Arbeitsbericht und kein Bündel: Er wird als Arbeitsbericht übernommen.</translation>
    </message>
    <message>
        <source>This is what an office hands out; the van opens it.</source>
        <translation>Das ist, was ein Büro mitgibt; der Wagen öffnet es.</translation>
    </message>
    <message>
        <source>This is work that a van brings back; the office receives it.</source>
        <translation>Das ist Arbeit, die ein Wagen zurückbringt; das Büro nimmt sie entgegen.</translation>
    </message>
    <message>
        <source>This line</source>
        <translation>Diesen Anschluss</translation>
    </message>
    <message>
        <source>This needs the PIN of %1.</source>
        <translation>Dazu ist die PIN von %1 nötig.</translation>
    </message>
    <message>
        <source>This needs the PIN of %1:</source>
        <translation>Dafür ist die PIN von %1 nötig:</translation>
    </message>
    <message>
        <source>This order needs no certificate; complete it.</source>
        <translation>Dieser Auftrag braucht kein Zertifikat; abschließen.</translation>
    </message>
    <message>
        <source>This settlement changed the order or an entry and is not taken back: change the order, or strike the entry out and record the right one.</source>
        <translation>Diese Klärung hat den Auftrag oder einen Eintrag geändert und wird nicht zurückgenommen: Ändern Sie den Auftrag, oder streichen Sie den Eintrag und halten Sie den richtigen fest.</translation>
    </message>
    <message>
        <source>This van works for the issuer with the key %1, and this is of %2. If the issuer has a new key, have the office read it out by telephone, and enter what you hear.</source>
        <translation>Dieser Wagen arbeitet für den Aussteller mit dem Schlüssel %1, und dies ist von %2. Hat der Aussteller einen neuen Schlüssel, lassen Sie ihn sich vom Büro am Telefon vorlesen und geben Sie ein, was Sie hören.</translation>
    </message>
    <message>
        <source>This week</source>
        <translation>Diese Woche</translation>
    </message>
    <message>
        <source>Thunderstorm</source>
        <translation>Gewitter</translation>
    </message>
    <message>
        <source>Tip to ground %1, ring to ground %2 and tip to ring %3 (%4) do not fit and were read twice: an open wire, leakage, a floating feed, or an open ground lead. A meter loads each wire in turn; to be cleared</source>
        <translation>a‑Ader gegen Erde %1, b‑Ader gegen Erde %2 und a‑Ader gegen b‑Ader %3 (%4) passen nicht zusammen und wurden zweimal gemessen: Aderbruch, Ableitung, erdfreie Speisung oder offene Erdleitung. Ein Messgerät belastet jede Ader für sich; zu beseitigen</translation>
    </message>
    <message>
        <source>Tip to ground %1, ring to ground %2 and tip to ring %3 (%4) do not fit: open wire, leakage, floating feed, or an open ground lead: prove the ground lead, read again</source>
        <translation>a‑Ader gegen Erde %1, b‑Ader gegen Erde %2 und a‑Ader gegen b‑Ader %3 (%4) passen nicht zusammen: Aderbruch, Ableitung, erdfreie Speisung oder offene Erdleitung: die Erdleitung prüfen, noch einmal messen</translation>
    </message>
    <message>
        <source>To be mended too</source>
        <translation>Auch zu beheben</translation>
    </message>
    <message>
        <source>To be programmed into the terminal equipment.</source>
        <translation>In das Endgerät einzugeben.</translation>
    </message>
    <message>
        <source>To be programmed into the terminal equipment. Digits are grouped for reading aloud; key them in without gaps.</source>
        <translation>In das Endgerät einzugeben. Die Ziffern sind zum Vorlesen gruppiert; tippen Sie sie ohne Lücken ein.</translation>
    </message>
    <message>
        <source>To be settled</source>
        <translation>Zu klären</translation>
    </message>
    <message>
        <source>To be settled between stations</source>
        <translation>Zwischen Stationen zu klären</translation>
    </message>
    <message>
        <source>To check this certificate</source>
        <translation>Wie dieses Zertifikat geprüft wird</translation>
    </message>
    <message>
        <source>To number</source>
        <translation>Zu Rufnummer</translation>
    </message>
    <message>
        <source>To read aloud</source>
        <translation>Zum Vorlesen</translation>
    </message>
    <message>
        <source>To the board</source>
        <translation>Zur Tafel</translation>
    </message>
    <message>
        <source>To the entry of the next step</source>
        <translation>Zur Eingabe des nächsten Schritts</translation>
    </message>
    <message>
        <source>To the next line at the same premises</source>
        <translation>Zum nächsten Anschluss am selben Ort</translation>
    </message>
    <message>
        <source>To the station %1</source>
        <translation>Zur Station %1</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>Told</source>
        <translation>Verständigt</translation>
    </message>
    <message>
        <source>Told: %1.</source>
        <translation>Verständigt: %1.</translation>
    </message>
    <message>
        <source>Traffic</source>
        <translation>Verkehr</translation>
    </message>
    <message>
        <source>Trouble</source>
        <translation>Störung</translation>
    </message>
    <message>
        <source>Trouble %1 is open on this circuit: %2</source>
        <translation>Störung %1 ist an diesem Anschluss offen: %2</translation>
    </message>
    <message>
        <source>Trouble %1 is opened.</source>
        <translation>Störung %1 ist angelegt.</translation>
    </message>
    <message>
        <source>Trouble %1 was opened later, %2.</source>
        <translation>Störung %1 wurde später eröffnet, %2.</translation>
    </message>
    <message>
        <source>Trouble closed: %1</source>
        <translation>Störung abgeschlossen: %1</translation>
    </message>
    <message>
        <source>Trouble since then: %1</source>
        <translation>Störung seither: %1</translation>
    </message>
    <message>
        <source>Trouble: %1</source>
        <translation>Störung: %1</translation>
    </message>
    <message>
        <source>Troubles</source>
        <translation>Störungen</translation>
    </message>
    <message>
        <source>Troubles and repeats</source>
        <translation>Störungen und Wiederholungen</translation>
    </message>
    <message>
        <source>Troubles by the day they were opened; a repeat comes within 30 days of the last one that was closed on the circuit.</source>
        <translation>Störungen nach dem Tag der Aufnahme; eine Wiederholung folgt innerhalb von 30 Tagen auf die letzte, die am Anschluss behoben wurde.</translation>
    </message>
    <message>
        <source>Try again later</source>
        <translation>Später noch einmal versuchen</translation>
    </message>
    <message>
        <source>Try again, or open other records.</source>
        <translation>Erneut versuchen oder einen anderen Datenbestand öffnen.</translation>
    </message>
    <message>
        <source>Try again, then call the switch centre</source>
        <translation>Noch einmal versuchen, dann den Vermittlungsbetrieb anrufen</translation>
    </message>
    <message>
        <source>Try again, then try another number</source>
        <translation>Noch einmal versuchen, dann eine andere Rufnummer versuchen</translation>
    </message>
    <message>
        <source>Try again; if it stays, call the switch centre</source>
        <translation>Noch einmal versuchen; wenn es bleibt, den Vermittlungsbetrieb anrufen</translation>
    </message>
    <message>
        <source>Turn-up</source>
        <translation>Inbetriebnahme</translation>
    </message>
    <message>
        <source>Turn-up records and certificates for ISDN basic-rate and analog lines</source>
        <translation>Einrichtung und Zertifikate von ISDN-Basisanschlüssen und analogen Anschlüssen</translation>
    </message>
    <message>
        <source>Two names of one thing: what was measured counts.</source>
        <translation>Zwei Namen für dasselbe: Was gemessen wurde, zählt.</translation>
    </message>
    <message>
        <source>Two wires of a cable that belong together; the one is called tip, the other ring.</source>
        <translation>Zwei zusammengehörende Adern eines Kabels; die eine heißt a‑Ader, die andere b‑Ader.</translation>
    </message>
    <message>
        <source>Type</source>
        <translation>Typ</translation>
    </message>
    <message>
        <source>Type a list instead</source>
        <translation>Stattdessen Liste eingeben</translation>
    </message>
    <message>
        <source>Type one here, or choose a row of the list below.</source>
        <translation>Hier eine eingeben oder unten eine Zeile der Liste wählen.</translation>
    </message>
    <message>
        <source>U</source>
        <translation>U</translation>
    </message>
    <message>
        <source>U interface</source>
        <translation>U-Schnittstelle</translation>
    </message>
    <message>
        <source>US Letter</source>
        <translation>US Letter</translation>
    </message>
    <message>
        <source>Unallocated (unassigned) number</source>
        <translation>Nicht zugeteilte Rufnummer</translation>
    </message>
    <message>
        <source>Unavailable time</source>
        <translation>Nicht verfügbare Zeit</translation>
    </message>
    <message>
        <source>Undo   Ctrl+Z</source>
        <translation>Rückgängig   Strg+Z</translation>
    </message>
    <message>
        <source>Undo the step before   Ctrl+Z</source>
        <translation>Schritt davor rückgängig   Strg+Z</translation>
    </message>
    <message>
        <source>Undo: they stay here</source>
        <translation>Rückgängig: sie bleiben hier</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Until it is done nobody else can write.</source>
        <translation>Bis es fertig ist, kann niemand sonst schreiben.</translation>
    </message>
    <message>
        <source>Use %1   Ctrl+R</source>
        <translation>%1 übernehmen   Strg+R</translation>
    </message>
    <message>
        <source>Use %1 instead</source>
        <translation>Stattdessen %1 übernehmen</translation>
    </message>
    <message>
        <source>Use 56 kbit/s</source>
        <translation>56 kbit/s verwenden</translation>
    </message>
    <message>
        <source>Use 56 kbit/s instead of 64; try again</source>
        <translation>56 kbit/s statt 64 verwenden; noch einmal versuchen</translation>
    </message>
    <message>
        <source>Use a registered instrument within its calibration, or have it entered.</source>
        <translation>Ein gültig kalibriertes Messgerät aus dem Register benutzen oder das benutzte eintragen lassen.</translation>
    </message>
    <message>
        <source>Use the new number in the diagnostic</source>
        <translation>Die neue Rufnummer aus der Diagnose verwenden</translation>
    </message>
    <message>
        <source>Use these columns</source>
        <translation>Diese Spalten verwenden</translation>
    </message>
    <message>
        <source>User busy</source>
        <translation>Teilnehmer besetzt</translation>
    </message>
    <message>
        <source>User not member of closed user group</source>
        <translation>Teilnehmer nicht in der geschlossenen Benutzergruppe</translation>
    </message>
    <message>
        <source>V ac; above %1 V (where it is wet: %2 V): stop</source>
        <translation>V~; über %1 V (wo es nass ist: %2 V): aufhören</translation>
    </message>
    <message>
        <source>V dc; above %1 V: stop</source>
        <translation>V=; über %1 V: aufhören</translation>
    </message>
    <message>
        <source>VN series</source>
        <translation>VN-Reihe</translation>
    </message>
    <message>
        <source>Va&amp;ns</source>
        <translation>&amp;Wagen</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Values that stay: %1.</source>
        <translation>Werte, die bleiben: %1.</translation>
    </message>
    <message>
        <source>Van</source>
        <translation>Wagen</translation>
    </message>
    <message>
        <source>Variant</source>
        <translation>Variante</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Verdicts</source>
        <translation>Ergebnisse</translation>
    </message>
    <message>
        <source>Version</source>
        <translation>Version</translation>
    </message>
    <message>
        <source>Visit</source>
        <translation>Einsatz</translation>
    </message>
    <message>
        <source>Visit by %1</source>
        <translation>Einsatz von %1</translation>
    </message>
    <message>
        <source>Visit by %1, until %2</source>
        <translation>Einsatz von %1, bis %2</translation>
    </message>
    <message>
        <source>Visit by %1, until %2, %3</source>
        <translation>Einsatz von %1, bis %2, %3</translation>
    </message>
    <message>
        <source>Visit, until %1</source>
        <translation>Einsatz, bis %1</translation>
    </message>
    <message>
        <source>Visit, until %1, %2</source>
        <translation>Einsatz, bis %1, %2</translation>
    </message>
    <message>
        <source>Visit: %1</source>
        <translation>Einsatz: %1</translation>
    </message>
    <message>
        <source>Visits</source>
        <translation>Einsätze</translation>
    </message>
    <message>
        <source>Voided by %1: %2</source>
        <translation>Gestrichen von %1: %2</translation>
    </message>
    <message>
        <source>Voltage from elsewhere was not measured.</source>
        <translation>Fremde Spannung wurde nicht gemessen.</translation>
    </message>
    <message>
        <source>Voltage on the pair that comes from elsewhere than the serving office.</source>
        <translation>Spannung auf der Doppelader, die nicht von der Vermittlungsstelle kommt.</translation>
    </message>
    <message>
        <source>WAITS on %1. %2</source>
        <translation>WARTET auf %1. %2</translation>
    </message>
    <message>
        <source>WAITS on %1: %2. %3</source>
        <translation>WARTET auf %1: %2. %3</translation>
    </message>
    <message>
        <source>WAITS.</source>
        <translation>WARTET.</translation>
    </message>
    <message>
        <source>Waiting on</source>
        <translation>Wartet auf</translation>
    </message>
    <message>
        <source>Waiting or not</source>
        <translation>Wartend oder nicht</translation>
    </message>
    <message>
        <source>Waits on</source>
        <translation>Wartet auf</translation>
    </message>
    <message>
        <source>Waits on nobody</source>
        <translation>Wartet auf niemanden</translation>
    </message>
    <message>
        <source>Waits on: %1</source>
        <translation>Wartet auf: %1</translation>
    </message>
    <message>
        <source>Warnings</source>
        <translation>Warnungen</translation>
    </message>
    <message>
        <source>Was the meter proved on a known source?</source>
        <translation>Wurde das Messgerät an einer bekannten Quelle geprüft?</translation>
    </message>
    <message>
        <source>Was there already.</source>
        <translation>War schon da.</translation>
    </message>
    <message>
        <source>We were there</source>
        <translation>Wir waren da</translation>
    </message>
    <message>
        <source>Wear insulating gloves and let no part of your body touch the strand until it is tensioned, dead-ended and permanently grounded.</source>
        <translation>Isolierhandschuhe tragen und das Tragseil mit keinem Körperteil berühren, bis es gespannt, abgespannt und dauerhaft geerdet ist.</translation>
    </message>
    <message>
        <source>Wear it when you drill, cut, drive, climb or work overhead, and at batteries.</source>
        <translation>Tragen beim Bohren, Schneiden, Einschlagen, Klettern oder Arbeiten über Kopf und an Batterien.</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>What %1 stands for</source>
        <translation>Wofür %1 steht</translation>
    </message>
    <message>
        <source>What a cause means</source>
        <translation>Was eine Ursache bedeutet</translation>
    </message>
    <message>
        <source>What a supervisor accepts by name and with a reason although a criterion is not met; the certificate says so.</source>
        <translation>Was die Aufsicht mit Namen und Grund abnimmt, obwohl ein Kriterium nicht erfüllt ist; das Zertifikat sagt es.</translation>
    </message>
    <message>
        <source>What can be done with the row</source>
        <translation>Was mit der Zeile getan werden kann</translation>
    </message>
    <message>
        <source>What cannot be is named with its reason.</source>
        <translation>Was nicht möglich ist, steht mit seinem Grund dabei.</translation>
    </message>
    <message>
        <source>What corrects the recorded entry is empty; the old one stays.</source>
        <translation>Die Korrektur ist leer; der alte Eintrag bleibt.</translation>
    </message>
    <message>
        <source>What failed</source>
        <translation>Was fehlschlug</translation>
    </message>
    <message>
        <source>What feeds the NT</source>
        <translation>Speisung des NT</translation>
    </message>
    <message>
        <source>What feeds the NT was not recorded; usually it is a mains socket at the premises.</source>
        <translation>Was den NT speist, wurde nicht eingetragen; meist ist es eine Steckdose am Standort.</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Was geschehen ist</translation>
    </message>
    <message>
        <source>What happens</source>
        <translation>Was geschieht</translation>
    </message>
    <message>
        <source>What happens next</source>
        <translation>Wie es weitergeht</translation>
    </message>
    <message>
        <source>What is dated ahead counts as it is dated: %1.</source>
        <translation>Was vordatiert ist, zählt so, wie es datiert ist: %1.</translation>
    </message>
    <message>
        <source>What is dated ahead never counts: %1.</source>
        <translation>Was vordatiert ist, zählt nie: %1.</translation>
    </message>
    <message>
        <source>What is declared here</source>
        <translation>Was hier erklärt wird</translation>
    </message>
    <message>
        <source>What is due by today, for the installer chosen below or for all, as a PDF</source>
        <translation>Was bis heute fällig ist, für den unten gewählten Monteur oder für alle, als PDF</translation>
    </message>
    <message>
        <source>What is foreseen changes nothing.</source>
        <translation>Was vorausgesehen wird, ändert nichts.</translation>
    </message>
    <message>
        <source>What is listed is taken in. %1: %2</source>
        <translation>Was aufgeführt ist, wurde übernommen. %1: %2</translation>
    </message>
    <message>
        <source>What is missing</source>
        <translation>Was fehlt</translation>
    </message>
    <message>
        <source>What is not covered</source>
        <translation>Was nicht erfasst ist</translation>
    </message>
    <message>
        <source>What is to be mended</source>
        <translation>Was zu beheben ist</translation>
    </message>
    <message>
        <source>What is typed is kept. The order can be taken in once these are right:</source>
        <translation>Die Eingaben bleiben erhalten. Der Auftrag kann aufgenommen werden, sobald dies stimmt:</translation>
    </message>
    <message>
        <source>What is unusual in them is to be confirmed with the provider.</source>
        <translation>Was daran ungewöhnlich ist, muss der Anbieter bestätigen.</translation>
    </message>
    <message>
        <source>What is wrong with the settings</source>
        <translation>Fehler in den Einstellungen</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>What it is about</source>
        <translation>Worum es geht</translation>
    </message>
    <message>
        <source>What it is for, and what to do when it fails   Shift+F1</source>
        <translation>Wozu das dient, und was zu tun ist, wenn es scheitert   Shift+F1</translation>
    </message>
    <message>
        <source>What it means</source>
        <translation>Bedeutung</translation>
    </message>
    <message>
        <source>What it was</source>
        <translation>Was es war</translation>
    </message>
    <message>
        <source>What lacks is named, and nothing is issued until it is there; one that stands no longer is issued anew from evidence that counts.</source>
        <translation>Was fehlt, wird genannt, und bis es da ist, wird nichts ausgestellt; eines, das nicht mehr gilt, wird aus zählenden Nachweisen neu ausgestellt.</translation>
    </message>
    <message>
        <source>What lies beyond the serving switch: other networks, and the lines of those you call.</source>
        <translation>Was hinter der Vermittlungsstelle liegt: andere Netze und die Anschlüsse derer, die Sie anrufen.</translation>
    </message>
    <message>
        <source>What stands in it</source>
        <translation>Was darin steht</translation>
    </message>
    <message>
        <source>What the columns stand for</source>
        <translation>Wofür die Spalten stehen</translation>
    </message>
    <message>
        <source>What the loop is made of, from the office to the customer: sections with gauge and length, bridged taps, load coils.</source>
        <translation>Woraus die Anschlussleitung besteht, von der Vermittlungsstelle zum Kunden: Abschnitte mit Drahtstärke und Länge, Stichleitungen, Pupinspulen.</translation>
    </message>
    <message>
        <source>What the office recorded counts: %1</source>
        <translation>Es zählt, was das Büro aufgezeichnet hat: %1</translation>
    </message>
    <message>
        <source>What the part is for, and what to do when it fails</source>
        <translation>Wozu der Teil dient und was zu tun ist, wenn er fehlschlägt</translation>
    </message>
    <message>
        <source>What the run proves: %1</source>
        <translation>Was der Messlauf belegt: %1</translation>
    </message>
    <message>
        <source>What the van is called</source>
        <translation>Wie der Wagen heißt</translation>
    </message>
    <message>
        <source>What the voltage came from</source>
        <translation>Woher die Spannung kam</translation>
    </message>
    <message>
        <source>What this station recorded counts: %1</source>
        <translation>Es zählt, was diese Station aufgezeichnet hat: %1</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Was zu tun ist</translation>
    </message>
    <message>
        <source>What was certified</source>
        <translation>Was bescheinigt wurde</translation>
    </message>
    <message>
        <source>What was certified still holds.</source>
        <translation>Was bescheinigt wurde, gilt noch.</translation>
    </message>
    <message>
        <source>What was checked</source>
        <translation>Was geprüft wurde</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Was getan wurde</translation>
    </message>
    <message>
        <source>What was done about it</source>
        <translation>Was dagegen getan wurde</translation>
    </message>
    <message>
        <source>What was done after the failed run</source>
        <translation>Was nach dem nicht bestandenen Messlauf getan wurde</translation>
    </message>
    <message>
        <source>What was done here goes to the office; the order is back there.</source>
        <translation>Was hier getan wurde, geht ins Büro; der Auftrag ist wieder dort.</translation>
    </message>
    <message>
        <source>What was done here goes to the office; the order stays out.</source>
        <translation>Was hier getan wurde, geht ins Büro; der Auftrag bleibt unterwegs.</translation>
    </message>
    <message>
        <source>What was done last</source>
        <translation>Was zuletzt getan wurde</translation>
    </message>
    <message>
        <source>What was kept</source>
        <translation>Was erhalten blieb</translation>
    </message>
    <message>
        <source>What was measured agrees with the record.</source>
        <translation>Das Gemessene stimmt mit dem Leitungsaufbau im Datenbestand überein.</translation>
    </message>
    <message>
        <source>What was measured is drawn here over time.</source>
        <translation>Hier wird das Gemessene im Zeitverlauf gezeichnet.</translation>
    </message>
    <message>
        <source>What was recorded before is still there.</source>
        <translation>Was zuvor erfasst wurde, ist noch da.</translation>
    </message>
    <message>
        <source>What was recorded of order %1 is void already.</source>
        <translation>Was zu Auftrag %1 eingetragen war, ist schon ungültig.</translation>
    </message>
    <message>
        <source>What was seen</source>
        <translation>Beobachtet</translation>
    </message>
    <message>
        <source>What was typed here before was kept.</source>
        <translation>Die früheren Eingaben hier sind erhalten.</translation>
    </message>
    <message>
        <source>What was wrong</source>
        <translation>Was gestört war</translation>
    </message>
    <message>
        <source>What would be changed, and what stays</source>
        <translation>Was geändert würde und was bleibt</translation>
    </message>
    <message>
        <source>What would mend it: %1 — then %2 dB, %3.</source>
        <translation>Abhilfe: %1 – dann %2 dB, %3.</translation>
    </message>
    <message>
        <source>What you must know</source>
        <translation>Was Sie wissen müssen</translation>
    </message>
    <message>
        <source>What you typed can be saved nowhere. Make room, or close once more to lose it.</source>
        <translation>Ihre Eingaben lassen sich nirgends speichern. Schaffen Sie Platz, oder schließen Sie nochmals; dann gehen sie verloren.</translation>
    </message>
    <message>
        <source>What you typed is only in this window until it can be saved: %1</source>
        <translation>Ihre Eingaben sind nur in diesem Fenster, bis sie gespeichert werden können: %1</translation>
    </message>
    <message>
        <source>What you typed is saved.</source>
        <translation>Ihre Eingaben sind gespeichert.</translation>
    </message>
    <message>
        <source>What you typed waits to be saved, and is kept beside the records until then: %1</source>
        <translation>Ihre Eingaben warten auf das Speichern und liegen bis dahin neben dem Datenbestand: %1</translation>
    </message>
    <message>
        <source>What “%1” means</source>
        <translation>Was „%1“ bedeutet</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>When it fails: %1</source>
        <translation>Wenn es scheitert: %1</translation>
    </message>
    <message>
        <source>When the line fails</source>
        <translation>Wenn der Anschluss ausfällt</translation>
    </message>
    <message>
        <source>When the network termination (NT) has no power, this line is dead: no call, no emergency call and no alarm goes out over it.</source>
        <translation>Wenn der Netzabschluss (NT) keinen Strom hat, ist dieser Anschluss tot: Kein Ruf, kein Notruf und kein Alarm geht über ihn hinaus.</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>Where nobody opens or the customer is not ready, say so at leaving: that is a visit too.</source>
        <translation>Öffnet niemand oder ist der Kunde nicht bereit, das beim Gehen angeben: auch das ist ein Einsatz.</translation>
    </message>
    <message>
        <source>Where the cause comes from</source>
        <translation>Woher die Ursache kommt</translation>
    </message>
    <message>
        <source>Where the pair ends at the switch that serves the customer.</source>
        <translation>Wo die Doppelader an der Vermittlung endet, die den Kunden bedient.</translation>
    </message>
    <message>
        <source>Where the pair is worked on</source>
        <translation>Wo an der Doppelader gearbeitet wird</translation>
    </message>
    <message>
        <source>Where the pairs end: orders name it by its key. More of them, people and instruments come in by files.</source>
        <translation>Wo die Doppeladern enden: Aufträge nennen sie mit ihrem Kürzel. Weitere, Personen und Messgeräte kommen mit Dateien.</translation>
    </message>
    <message>
        <source>Where tip and ring change places.</source>
        <translation>Wo a‑Ader und b‑Ader die Plätze tauschen.</translation>
    </message>
    <message>
        <source>Whether a certificate is genuine, and still stands</source>
        <translation>Ob ein Zertifikat echt ist und noch gilt</translation>
    </message>
    <message>
        <source>Whether layer 2 is provisioned in the serving office.</source>
        <translation>Ob Schicht 2 in der Vermittlungsstelle eingerichtet ist.</translation>
    </message>
    <message>
        <source>Whether the SPID is built in the serving office's switch.</source>
        <translation>Ob die SPID in der Vermittlung eingerichtet ist.</translation>
    </message>
    <message>
        <source>Whether the line is built and connected.</source>
        <translation>Ob der Anschluss eingerichtet und beschaltet ist.</translation>
    </message>
    <message>
        <source>Whether the number rings this line equipment.</source>
        <translation>Ob die Rufnummer diese Teilnehmerschaltung ruft.</translation>
    </message>
    <message>
        <source>Which criteria</source>
        <translation>Welche Kriterien</translation>
    </message>
    <message>
        <source>Which language the switch speaks on the D channel; it says whether there are SPIDs, of which shape, and how a terminal comes by its TEI.</source>
        <translation>Welche Sprache die Vermittlung auf dem D-Kanal spricht; sie sagt, ob es SPIDs gibt, in welcher Form, und wie ein Endgerät zu seinem TEI kommt.</translation>
    </message>
    <message>
        <source>Which loops of an office carry basic rate, and what would mend others</source>
        <translation>Welche Leitungen einer Vermittlungsstelle den Basisanschluss tragen, und was andere verbessern würde</translation>
    </message>
    <message>
        <source>While a run counts, at its clock</source>
        <translation>Während ein Messlauf zählt, an seiner Uhr</translation>
    </message>
    <message>
        <source>Who makes the entries</source>
        <translation>Wer die Einträge macht</translation>
    </message>
    <message>
        <source>Who says that it is cleared</source>
        <translation>Wer sagt, dass sie beseitigt ist</translation>
    </message>
    <message>
        <source>Who told them</source>
        <translation>Wer es gesagt hat</translation>
    </message>
    <message>
        <source>Who was kept away</source>
        <translation>Wer ferngehalten wurde</translation>
    </message>
    <message>
        <source>Who was told</source>
        <translation>Wer es weiß</translation>
    </message>
    <message>
        <source>Who works: %1</source>
        <translation>Es arbeitet: %1</translation>
    </message>
    <message>
        <source>Who works; goes into the history</source>
        <translation>Wer arbeitet; steht im Verlauf</translation>
    </message>
    <message>
        <source>Whom to call</source>
        <translation>Wen Sie anrufen</translation>
    </message>
    <message>
        <source>Whose part</source>
        <translation>Zuständigkeit</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Why another day</source>
        <translation>Warum ein anderer Tag</translation>
    </message>
    <message>
        <source>Why does it not count? Enter records it, Esc leaves it.</source>
        <translation>Warum zählt es nicht? Eingabe erfasst es, Esc lässt es.</translation>
    </message>
    <message>
        <source>Why it is not accepted yet</source>
        <translation>Warum noch nicht abgenommen</translation>
    </message>
    <message>
        <source>Why it is settled so</source>
        <translation>Warum es so geklärt wird</translation>
    </message>
    <message>
        <source>Why it may pass</source>
        <translation>Warum zulässig</translation>
    </message>
    <message>
        <source>Why not accepted</source>
        <translation>Warum nicht abgenommen</translation>
    </message>
    <message>
        <source>Will be taken in and held</source>
        <translation>Wird aufgenommen, aber zurückgehalten</translation>
    </message>
    <message>
        <source>Wire</source>
        <translation>Draht</translation>
    </message>
    <message>
        <source>Wire of element %1</source>
        <translation>Drahtstärke von Element %1</translation>
    </message>
    <message>
        <source>Wire: AWG, or mm. Length: ft, or m; of a coil mH. Delete on a row's kind takes the row out.</source>
        <translation>Draht: AWG oder mm. Länge: ft oder m; bei einer Spule mH. Entf auf der Art einer Zeile entfernt die Zeile.</translation>
    </message>
    <message>
        <source>Wiring and equipment on your side of %1: the point of demarcation.</source>
        <translation>Leitungen und Geräte auf Ihrer Seite %1: der Übergabepunkt.</translation>
    </message>
    <message>
        <source>With</source>
        <translation>Mit</translation>
    </message>
    <message>
        <source>With %1 % confidence, at most one bit in %2 arrived wrong in this run.</source>
        <translation>Mit %1 % Sicherheit kam in diesem Messlauf höchstens ein Bit von %2 falsch an.</translation>
    </message>
    <message>
        <source>With %1 now.</source>
        <translation>Jetzt bei %1.</translation>
    </message>
    <message>
        <source>With %1 since %2</source>
        <translation>Bei %1 seit %2</translation>
    </message>
    <message>
        <source>With one channel or one number a self-call is not possible; the path is the test line or the far end.</source>
        <translation>Mit einem Kanal oder einer Rufnummer ist kein Selbstanruf möglich; der Weg führt zum Prüfanschluss oder zur Gegenstelle.</translation>
    </message>
    <message>
        <source>Without visit</source>
        <translation>Ohne Einsatz</translation>
    </message>
    <message>
        <source>Without: %1.</source>
        <translation>Ohne: %1.</translation>
    </message>
    <message>
        <source>Words of the file</source>
        <translation>Wörter der Datei</translation>
    </message>
    <message>
        <source>Words that are other than ours</source>
        <translation>Wörter, die anders sind als unsere</translation>
    </message>
    <message>
        <source>Working alone</source>
        <translation>Allein arbeiten</translation>
    </message>
    <message>
        <source>Works of others in it</source>
        <translation>Werke anderer darin</translation>
    </message>
    <message>
        <source>Would be changed: %1.</source>
        <translation>Geändert würden: %1.</translation>
    </message>
    <message>
        <source>Would help: %1.</source>
        <translation>Abhilfe: %1.</translation>
    </message>
    <message>
        <source>Would mend it</source>
        <translation>Abhilfe</translation>
    </message>
    <message>
        <source>Write the file</source>
        <translation>Datei schreiben</translation>
    </message>
    <message>
        <source>YYYY-MM-DD</source>
        <translation>JJJJ-MM-TT</translation>
    </message>
    <message>
        <source>YYYY-MM-DD; up and down change the day</source>
        <translation>JJJJ-MM-TT; auf und ab ändern den Tag</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Ja</translation>
    </message>
    <message>
        <source>Yes, confirmed</source>
        <translation>Ja, bestätigt</translation>
    </message>
    <message>
        <source>You are logged in as %1 and act as nobody else.</source>
        <translation>Sie sind als %1 angemeldet und handeln für niemand anderen.</translation>
    </message>
    <message>
        <source>You told us</source>
        <translation>Sie sagten uns</translation>
    </message>
    <message>
        <source>Your line is not ready yet</source>
        <translation>Ihr Anschluss ist noch nicht fertig</translation>
    </message>
    <message>
        <source>Your line is not repaired yet</source>
        <translation>Ihr Anschluss ist noch nicht entstört</translation>
    </message>
    <message>
        <source>Your line, order %1</source>
        <translation>Ihr Anschluss, Auftrag %1</translation>
    </message>
    <message>
        <source>a CSV table of this program</source>
        <translation>eine CSV-Tabelle dieses Programms</translation>
    </message>
    <message>
        <source>a JSON file of this program</source>
        <translation>eine JSON-Datei dieses Programms</translation>
    </message>
    <message>
        <source>a PNG picture</source>
        <translation>ein PNG-Bild</translation>
    </message>
    <message>
        <source>a SPID has digits only</source>
        <translation>eine SPID hat nur Ziffern</translation>
    </message>
    <message>
        <source>a call for %1 did not go through</source>
        <translation>ein Ruf für %1 kam nicht durch</translation>
    </message>
    <message>
        <source>a call in rings the line</source>
        <translation>ein ankommender Anruf lässt es klingeln</translation>
    </message>
    <message>
        <source>a change needs an event</source>
        <translation>eine Änderung braucht ein Ereignis</translation>
    </message>
    <message>
        <source>a coil changes the loss far more than the resistance, up at high frequencies and down in the voice band</source>
        <translation>eine Spule ändert die Dämpfung weit mehr als den Widerstand, bei hohen Frequenzen aufwärts und im Sprachband abwärts</translation>
    </message>
    <message>
        <source>a column of an order file</source>
        <translation>eine Spalte einer Auftragsdatei</translation>
    </message>
    <message>
        <source>a complete card before each measurement that counts, no hazard open</source>
        <translation>eine vollständige Karte vor jeder Messung, die zählt, keine Gefahr offen</translation>
    </message>
    <message>
        <source>a contact was mended</source>
        <translation>ein Kontakt wurde behoben</translation>
    </message>
    <message>
        <source>a copy</source>
        <translation>eine Abschrift</translation>
    </message>
    <message>
        <source>a day as 2026-03-31</source>
        <translation>ein Tag wie 2026-03-31</translation>
    </message>
    <message>
        <source>a directory number has digits only</source>
        <translation>eine Rufnummer hat nur Ziffern</translation>
    </message>
    <message>
        <source>a dispatcher</source>
        <translation>Disponent</translation>
    </message>
    <message>
        <source>a failed one takes what the instrument measured on this visit out of the evidence, until one passes</source>
        <translation>ein nicht bestandener nimmt aus den Nachweisen, was das Messgerät bei diesem Einsatz gemessen hat, bis einer bestanden ist</translation>
    </message>
    <message>
        <source>a file for each line, and a cover that lists them all</source>
        <translation>je Anschluss eine Datei, dazu ein Deckblatt mit allen</translation>
    </message>
    <message>
        <source>a file for each, as it is sealed</source>
        <translation>je eine Datei, so wie versiegelt</translation>
    </message>
    <message>
        <source>a file of public keys</source>
        <translation>eine Datei mit öffentlichen Schlüsseln</translation>
    </message>
    <message>
        <source>a further run was made</source>
        <translation>ein weiterer Messlauf wurde gemacht</translation>
    </message>
    <message>
        <source>a migration needs a name like 0001_what.sql and a readable-from line</source>
        <translation>eine Migration braucht einen Namen wie 0001_what.sql und eine Zeile readable-from</translation>
    </message>
    <message>
        <source>a newer one counts</source>
        <translation>etwas Neueres zählt</translation>
    </message>
    <message>
        <source>a number of the order was announced on the pair since</source>
        <translation>auf der Doppelader wurde seither eine Rufnummer des Auftrags angesagt</translation>
    </message>
    <message>
        <source>a permit</source>
        <translation>eine Genehmigung</translation>
    </message>
    <message>
        <source>a server keeps these records: pg_dump backs them up there, and pg_restore brings them back</source>
        <translation>Diesen Datenbestand hält ein Server: dort sichert ihn pg_dump, und pg_restore stellt ihn wieder her</translation>
    </message>
    <message>
        <source>a server keeps these records: pg_restore brings back there what pg_dump backed up</source>
        <translation>Diesen Datenbestand hält ein Server: dort stellt pg_restore wieder her, was pg_dump gesichert hat</translation>
    </message>
    <message>
        <source>a setting was corrected</source>
        <translation>eine Einstellung wurde berichtigt</translation>
    </message>
    <message>
        <source>a supervisor</source>
        <translation>Aufsicht</translation>
    </message>
    <message>
        <source>a tap adds loss and no resistance</source>
        <translation>eine Stichleitung erhöht die Dämpfung, nicht den Widerstand</translation>
    </message>
    <message>
        <source>a text of %1 bytes does not fit into a QR code</source>
        <translation>ein Text von %1 Byte passt nicht in einen QR-Code</translation>
    </message>
    <message>
        <source>a value is in use elsewhere</source>
        <translation>ein Wert wird anderswo verwendet</translation>
    </message>
    <message>
        <source>a value is too long for the records</source>
        <translation>ein Wert ist zu lang für den Datenbestand</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>eine ganze Zahl</translation>
    </message>
    <message>
        <source>above</source>
        <translation>überschritten</translation>
    </message>
    <message>
        <source>accept with an exception</source>
        <translation>mit Ausnahme abnehmen</translation>
    </message>
    <message>
        <source>accepted</source>
        <translation>abgenommen</translation>
    </message>
    <message>
        <source>accepted by order %1</source>
        <translation>abgenommen mit Auftrag %1</translation>
    </message>
    <message>
        <source>accepted with exception</source>
        <translation>mit Ausnahme abgenommen</translation>
    </message>
    <message>
        <source>address as the installer needs it</source>
        <translation>Adresse, wie der Monteur sie braucht</translation>
    </message>
    <message>
        <source>address of the premises; orders with the same one are one visit</source>
        <translation>Adresse des Grundstücks; Aufträge mit derselben sind ein Einsatz</translation>
    </message>
    <message>
        <source>address, for papers</source>
        <translation>Adresse, für Papiere</translation>
    </message>
    <message>
        <source>all events of the chain are missing</source>
        <translation>alle Ereignisse der Kette fehlen</translation>
    </message>
    <message>
        <source>alternating voltage at 20 Hz between the wires while it rings</source>
        <translation>Wechselspannung mit 20 Hz zwischen den Adern, während es klingelt</translation>
    </message>
    <message>
        <source>an SVG picture</source>
        <translation>ein SVG-Bild</translation>
    </message>
    <message>
        <source>an analog line has no layers 1 to 3</source>
        <translation>ein analoger Anschluss hat keine Schichten 1 bis 3</translation>
    </message>
    <message>
        <source>an event needs its subject, its kind and who did it</source>
        <translation>ein Ereignis braucht Gegenstand, Art und wer es tat</translation>
    </message>
    <message>
        <source>an installer</source>
        <translation>Monteur</translation>
    </message>
    <message>
        <source>an object</source>
        <translation>ein Objekt</translation>
    </message>
    <message>
        <source>analog</source>
        <translation>analog</translation>
    </message>
    <message>
        <source>analog line</source>
        <translation>analoger Anschluss</translation>
    </message>
    <message>
        <source>analog, two wires</source>
        <translation>analog, zwei Adern</translation>
    </message>
    <message>
        <source>and</source>
        <translation>und</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>und %1 weitere</translation>
    </message>
    <message>
        <source>and %1 more on the job's page</source>
        <translation>und %1 mehr auf der Auftragsseite</translation>
    </message>
    <message>
        <source>announced %1</source>
        <translation>angesagt %1</translation>
    </message>
    <message>
        <source>announced by the network</source>
        <translation>vom Netz angesagt</translation>
    </message>
    <message>
        <source>another gauge changes resistance and loss, the resistance more</source>
        <translation>eine andere Drahtstärke ändert Widerstand und Dämpfung, den Widerstand mehr</translation>
    </message>
    <message>
        <source>another program has the database open</source>
        <translation>ein anderes Programm hat die Datenbank geöffnet</translation>
    </message>
    <message>
        <source>another run decides</source>
        <translation>ein anderer Messlauf entscheidet</translation>
    </message>
    <message>
        <source>answered in the error test</source>
        <translation>meldete sich in der Fehlermessung</translation>
    </message>
    <message>
        <source>answered when it was called</source>
        <translation>meldete sich auf Anruf</translation>
    </message>
    <message>
        <source>any NI-1 shape: the switch family is not known</source>
        <translation>jede Form von NI-1: die Bauart der Vermittlung ist nicht bekannt</translation>
    </message>
    <message>
        <source>any text</source>
        <translation>beliebiger Text</translation>
    </message>
    <message>
        <source>any time</source>
        <translation>jederzeit</translation>
    </message>
    <message>
        <source>arrived %1</source>
        <translation>angekommen %1</translation>
    </message>
    <message>
        <source>as below</source>
        <translation>wie unten</translation>
    </message>
    <message>
        <source>as below, all digits without separators</source>
        <translation>wie unten, alle Ziffern ohne Trennzeichen</translation>
    </message>
    <message>
        <source>as it stands in the register</source>
        <translation>wie es im Register steht</translation>
    </message>
    <message>
        <source>as labelled</source>
        <translation>laut Etikett</translation>
    </message>
    <message>
        <source>as labelled: an import confirms it</source>
        <translation>laut Etikett: Einlesen bestätigt es</translation>
    </message>
    <message>
        <source>as labelled: the office has not confirmed it yet</source>
        <translation>nach seinem Aufkleber: von der Dienststelle noch nicht bestätigt</translation>
    </message>
    <message>
        <source>as ordered: multipoint or point-to-point</source>
        <translation>wie bestellt: Mehrgeräteanschluss oder Punkt-zu-Punkt</translation>
    </message>
    <message>
        <source>as orders name it: north</source>
        <translation>wie Aufträge sie nennen: nord</translation>
    </message>
    <message>
        <source>as papers print it</source>
        <translation>wie ihn Papiere drucken</translation>
    </message>
    <message>
        <source>as read</source>
        <translation>wie abgelesen</translation>
    </message>
    <message>
        <source>as the customer says it</source>
        <translation>wie der Kunde es sagt</translation>
    </message>
    <message>
        <source>as the office</source>
        <translation>wie die Vermittlungsstelle</translation>
    </message>
    <message>
        <source>as told above</source>
        <translation>wie oben gesagt</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>at least %1 s without an error</source>
        <translation>mindestens %1 s ohne Fehler</translation>
    </message>
    <message>
        <source>at least 1</source>
        <translation>mindestens 1</translation>
    </message>
    <message>
        <source>at least as many as were sent</source>
        <translation>mindestens so viele, wie gesendet wurden</translation>
    </message>
    <message>
        <source>at least two</source>
        <translation>mindestens zwei</translation>
    </message>
    <message>
        <source>at least two words</source>
        <translation>mindestens zwei Wörter</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>at most %1 %2</source>
        <translation>höchstens %1 %2</translation>
    </message>
    <message>
        <source>at most %1 dB at %2 and %3 ohm, no load coil</source>
        <translation>höchstens %1 dB bei %2, höchstens %3 Ohm, keine Pupinspule</translation>
    </message>
    <message>
        <source>at most %1 ohm, and %2 dB at %3 kHz between %4 ohm</source>
        <translation>höchstens %1 Ohm und %2 dB bei %3 kHz, Abschluss %4 Ohm</translation>
    </message>
    <message>
        <source>at most %1 ohm, load coils where the design rule wants them</source>
        <translation>höchstens %1 Ohm, Pupinspulen, wo die Planungsregel sie verlangt</translation>
    </message>
    <message>
        <source>at most %1 ohm, with load coils %2</source>
        <translation>höchstens %1 Ohm, mit Pupinspulen %2</translation>
    </message>
    <message>
        <source>at the top of page 1</source>
        <translation>oben auf Seite 1</translation>
    </message>
    <message>
        <source>auto, or 0 to 63</source>
        <translation>auto, oder 0 bis 63</translation>
    </message>
    <message>
        <source>automatic</source>
        <translation>automatisch</translation>
    </message>
    <message>
        <source>automatic; fixed 0 on a point-to-point line</source>
        <translation>automatisch; fest 0 an einem Punkt-zu-Punkt-Anschluss</translation>
    </message>
    <message>
        <source>balance</source>
        <translation>Symmetrie</translation>
    </message>
    <message>
        <source>basic rate</source>
        <translation>ISDN</translation>
    </message>
    <message>
        <source>basic rate or analog</source>
        <translation>Basisanschluss oder analog</translation>
    </message>
    <message>
        <source>bears no head of a log</source>
        <translation>trägt keinen Kopf eines Protokolls</translation>
    </message>
    <message>
        <source>before the pair is touched</source>
        <translation>vor dem Berühren der Doppelader</translation>
    </message>
    <message>
        <source>begins neither with "issuer" nor with "station" and its tag</source>
        <translation>beginnt weder mit „issuer“ noch mit „station“ und ihrem Kennzeichen</translation>
    </message>
    <message>
        <source>belongs to %1</source>
        <translation>gehört zu %1</translation>
    </message>
    <message>
        <source>belongs to a database and is not replaced</source>
        <translation>gehört zu einer Datenbank und wird nicht ersetzt</translation>
    </message>
    <message>
        <source>beside it</source>
        <translation>daneben</translation>
    </message>
    <message>
        <source>better weather</source>
        <translation>besseres Wetter</translation>
    </message>
    <message>
        <source>between the wires, C-message weighted, off-hook towards the office's quiet termination</source>
        <translation>zwischen den Adern, C-bewertet, abgehoben gegen den Ruheabschluss der Vermittlungsstelle</translation>
    </message>
    <message>
        <source>beyond</source>
        <translation>dahinter</translation>
    </message>
    <message>
        <source>bit error ratio</source>
        <translation>Bitfehlerquote</translation>
    </message>
    <message>
        <source>bit error ratio at most %1</source>
        <translation>Bitfehlerquote höchstens %1</translation>
    </message>
    <message>
        <source>bit errors in a second</source>
        <translation>Bitfehler in einer Sekunde</translation>
    </message>
    <message>
        <source>bit errors in it</source>
        <translation>Bitfehler in ihr</translation>
    </message>
    <message>
        <source>bit/s</source>
        <translation>bit/s</translation>
    </message>
    <message>
        <source>bit/s of a data call; 64000 where it is empty</source>
        <translation>bit/s eines Datenanrufs; leer: 64000</translation>
    </message>
    <message>
        <source>bits in error at most %1</source>
        <translation>Bits falsch höchstens %1</translation>
    </message>
    <message>
        <source>bri</source>
        <translation>Basisanschluss</translation>
    </message>
    <message>
        <source>bridged tap</source>
        <translation>Stichleitung</translation>
    </message>
    <message>
        <source>bridged tap of %1, %2</source>
        <translation>Stichleitung %1, %2</translation>
    </message>
    <message>
        <source>busy or not answered elsewhere: it says nothing of this line</source>
        <translation>anderswo besetzt oder nicht angenommen: sagt nichts über diesen Anschluss</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>von %1</translation>
    </message>
    <message>
        <source>by cable</source>
        <translation>nach Kabel</translation>
    </message>
    <message>
        <source>by installer</source>
        <translation>nach Monteur</translation>
    </message>
    <message>
        <source>by month</source>
        <translation>nach Monat</translation>
    </message>
    <message>
        <source>by office</source>
        <translation>nach Vermittlungsstelle</translation>
    </message>
    <message>
        <source>by variant</source>
        <translation>nach Variante</translation>
    </message>
    <message>
        <source>cable and pair in the office</source>
        <translation>Kabel und Doppelader in der Vermittlungsstelle</translation>
    </message>
    <message>
        <source>calibrated on %1</source>
        <translation>kalibriert am %1</translation>
    </message>
    <message>
        <source>calibrated on %1, next due on %2</source>
        <translation>kalibriert am %1, wieder fällig am %2</translation>
    </message>
    <message>
        <source>calibrated on %1, was due on %2: not within its calibration when it was used</source>
        <translation>kalibriert am %1, fällig gewesen am %2: bei der Benutzung außerhalb seiner Kalibrierung</translation>
    </message>
    <message>
        <source>calibrated until %1</source>
        <translation>kalibriert bis %1</translation>
    </message>
    <message>
        <source>calibration not known</source>
        <translation>Kalibrierung nicht bekannt</translation>
    </message>
    <message>
        <source>call</source>
        <translation>Verbindung</translation>
    </message>
    <message>
        <source>call from channel %1 to channel %2 of this line</source>
        <translation>Ruf von Kanal %1 zu Kanal %2 dieses Anschlusses</translation>
    </message>
    <message>
        <source>call from one channel of this line to the other</source>
        <translation>Ruf von einem Kanal dieses Anschlusses zum anderen</translation>
    </message>
    <message>
        <source>call from this line to itself on %1</source>
        <translation>Ruf dieses Anschlusses zu sich selbst auf %1</translation>
    </message>
    <message>
        <source>call to a test line of the network on %1</source>
        <translation>Ruf zu einer Prüfnummer des Netzes auf %1</translation>
    </message>
    <message>
        <source>call to the far end on %1</source>
        <translation>Ruf zur Gegenstelle auf %1</translation>
    </message>
    <message>
        <source>calls</source>
        <translation>Verbindungen</translation>
    </message>
    <message>
        <source>can be read by others; keep it from them (chmod 600), and if somebody may have read it, have a supervisor make a new one: key renew --revoke</source>
        <translation>ist für andere lesbar; bitte vor ihnen schützen (chmod 600), und wenn ihn jemand gelesen haben kann, die Aufsicht einen neuen machen lassen: key renew --revoke</translation>
    </message>
    <message>
        <source>cancelled</source>
        <translation>storniert</translation>
    </message>
    <message>
        <source>cannot be put in its place</source>
        <translation>lässt sich nicht an seinen Platz bringen</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>lässt sich nicht lesen</translation>
    </message>
    <message>
        <source>cannot be read: %1</source>
        <translation>lässt sich nicht lesen: %1</translation>
    </message>
    <message>
        <source>cannot be replaced</source>
        <translation>lässt sich nicht ersetzen</translation>
    </message>
    <message>
        <source>cannot be written: %1</source>
        <translation>lässt sich nicht schreiben: %1</translation>
    </message>
    <message>
        <source>capacitance of a section or tap, if it is not the usual one</source>
        <translation>Kapazität eines Abschnitts oder einer Stichleitung, wenn es nicht die übliche ist</translation>
    </message>
    <message>
        <source>card, beside certificate %1</source>
        <translation>Karte, neben dem Zertifikat %1</translation>
    </message>
    <message>
        <source>card, no certificate</source>
        <translation>Karte, kein Zertifikat</translation>
    </message>
    <message>
        <source>cause %1</source>
        <translation>Ursache %1</translation>
    </message>
    <message>
        <source>certificate %1</source>
        <translation>Zertifikat %1</translation>
    </message>
    <message>
        <source>certificate %1, issue %2</source>
        <translation>Zertifikat %1, Ausgabe %2</translation>
    </message>
    <message>
        <source>certificate copied</source>
        <translation>Zertifikat kopiert</translation>
    </message>
    <message>
        <source>certificate issued</source>
        <translation>Zertifikat ausgestellt</translation>
    </message>
    <message>
        <source>certificate signed</source>
        <translation>Zertifikat unterschrieben</translation>
    </message>
    <message>
        <source>change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>change all lines of an office at once</source>
        <translation>alle Anschlüsse einer Vermittlungsstelle auf einmal ändern</translation>
    </message>
    <message>
        <source>change limit sets</source>
        <translation>Grenzwertsätze ändern</translation>
    </message>
    <message>
        <source>change of a line</source>
        <translation>Änderung eines Anschlusses</translation>
    </message>
    <message>
        <source>change offices and instruments</source>
        <translation>Vermittlungsstellen und Messgeräte ändern</translation>
    </message>
    <message>
        <source>change people and their roles</source>
        <translation>Personen und ihre Rollen ändern</translation>
    </message>
    <message>
        <source>change the issuer</source>
        <translation>den Aussteller ändern</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>choose</source>
        <translation>wählen</translation>
    </message>
    <message>
        <source>circuit %1</source>
        <translation>Anschluss %1</translation>
    </message>
    <message>
        <source>circuit loss at 1004 Hz</source>
        <translation>Dämpfung bei 1004 Hz</translation>
    </message>
    <message>
        <source>circuit noise</source>
        <translation>Leitungsgeräusch</translation>
    </message>
    <message>
        <source>clear</source>
        <translation>keine Gefahr gemessen</translation>
    </message>
    <message>
        <source>cleared</source>
        <translation>Behebung</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>behoben</translation>
    </message>
    <message>
        <source>code %1</source>
        <translation>Code %1</translation>
    </message>
    <message>
        <source>coil</source>
        <translation>Spule</translation>
    </message>
    <message>
        <source>column "%1" is missing</source>
        <translation>Spalte „%1“ fehlt</translation>
    </message>
    <message>
        <source>column "%1" is not known</source>
        <translation>Spalte „%1“ ist nicht bekannt</translation>
    </message>
    <message>
        <source>column "%1" is not known: its name %2</source>
        <translation>Spalte „%1“ ist nicht bekannt: ihr Name %2</translation>
    </message>
    <message>
        <source>column "%1" is not one of ours</source>
        <translation>Spalte „%1“ ist keine der unseren</translation>
    </message>
    <message>
        <source>column "%1" is there twice</source>
        <translation>Spalte „%1“ kommt zweimal vor</translation>
    </message>
    <message>
        <source>column "%1" stands there twice</source>
        <translation>Spalte „%1“ kommt zweimal vor</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>Spalte %1</translation>
    </message>
    <message>
        <source>column %1 is both mapped and ignored</source>
        <translation>Spalte %1 ist zugeordnet und zugleich ausgelassen</translation>
    </message>
    <message>
        <source>column %1 is not known</source>
        <translation>Spalte %1 ist nicht bekannt</translation>
    </message>
    <message>
        <source>columns %1 and %2 both stand for %3</source>
        <translation>Spalten %1 und %2 stehen beide für %3</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>im Fach üblich</translation>
    </message>
    <message>
        <source>common practice, from memory</source>
        <translation>im Fach üblich, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>common practice, from memory: aerial cable in the sun</source>
        <translation>im Fach üblich, aus dem Gedächtnis: Luftkabel in der Sonne</translation>
    </message>
    <message>
        <source>common practice, from memory; for a safety officer to confirm</source>
        <translation>im Fach üblich, aus dem Gedächtnis; von einer Sicherheitsfachkraft zu bestätigen</translation>
    </message>
    <message>
        <source>common practice; employer's rules</source>
        <translation>im Fach üblich; Regeln des Arbeitgebers</translation>
    </message>
    <message>
        <source>common practice; local traffic rules</source>
        <translation>im Fach üblich; örtliche Verkehrsregeln</translation>
    </message>
    <message>
        <source>comparison of the model with published losses</source>
        <translation>Vergleich des Modells mit veröffentlichten Dämpfungen</translation>
    </message>
    <message>
        <source>completed</source>
        <translation>abgeschlossen</translation>
    </message>
    <message>
        <source>contact</source>
        <translation>Kontakt</translation>
    </message>
    <message>
        <source>contact with another pair</source>
        <translation>Berührung mit einer anderen Doppelader</translation>
    </message>
    <message>
        <source>contact with the power lines</source>
        <translation>Berührung mit der Starkstromleitung</translation>
    </message>
    <message>
        <source>continued</source>
        <translation>Fortsetzung</translation>
    </message>
    <message>
        <source>copy %1</source>
        <translation>Abschrift %1</translation>
    </message>
    <message>
        <source>correction of the record</source>
        <translation>Berichtigung der Aufzeichnungen</translation>
    </message>
    <message>
        <source>counted</source>
        <translation>gezählt</translation>
    </message>
    <message>
        <source>counters cleared</source>
        <translation>Zähler zurückgesetzt</translation>
    </message>
    <message>
        <source>counters not cleared</source>
        <translation>Zähler nicht zurückgesetzt</translation>
    </message>
    <message>
        <source>counts</source>
        <translation>zählt</translation>
    </message>
    <message>
        <source>customer</source>
        <translation>Kunde</translation>
    </message>
    <message>
        <source>customer and no installer</source>
        <translation>Kunde, Monteur</translation>
    </message>
    <message>
        <source>customer and no premises</source>
        <translation>Kunde, Standort</translation>
    </message>
    <message>
        <source>customer and no premises and no installer</source>
        <translation>Kunde, Standort, Monteur</translation>
    </message>
    <message>
        <source>customer not ready</source>
        <translation>Kunde nicht bereit</translation>
    </message>
    <message>
        <source>customer's own</source>
        <translation>des Kunden eigenes</translation>
    </message>
    <message>
        <source>cut over</source>
        <translation>umgelegt</translation>
    </message>
    <message>
        <source>d MMM</source>
        <translation>d. MMM</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <translation>d. MMM yyyy</translation>
    </message>
    <message>
        <source>dB; at most %1</source>
        <translation>dB; höchstens %1</translation>
    </message>
    <message>
        <source>dBrnC</source>
        <translation>dBrnC</translation>
    </message>
    <message>
        <source>data</source>
        <translation>Daten</translation>
    </message>
    <message>
        <source>day by which it is promised, YYYY-MM-DD</source>
        <translation>Tag, zu dem er zugesagt ist, JJJJ-MM-TT</translation>
    </message>
    <message>
        <source>day of the calibration, YYYY-MM-DD</source>
        <translation>Tag der Kalibrierung, JJJJ-MM-TT</translation>
    </message>
    <message>
        <source>day on which the calibration ends, or not_required; a further row of the same instrument is a further calibration</source>
        <translation>Tag, an dem die Kalibrierung endet, oder not_required; eine weitere Zeile desselben Messgeräts ist eine weitere Kalibrierung</translation>
    </message>
    <message>
        <source>ddd d MMM</source>
        <translation>ddd d. MMM</translation>
    </message>
    <message>
        <source>decided</source>
        <translation>entschieden</translation>
    </message>
    <message>
        <source>decision %1</source>
        <translation>Entscheidung %1</translation>
    </message>
    <message>
        <source>declare a van lost</source>
        <translation>einen Wagen verloren melden</translation>
    </message>
    <message>
        <source>desk</source>
        <translation>Büroarbeit</translation>
    </message>
    <message>
        <source>detector</source>
        <translation>Erkennungsprüfung</translation>
    </message>
    <message>
        <source>detector check</source>
        <translation>Erkennungsprüfung</translation>
    </message>
    <message>
        <source>dial tone</source>
        <translation>Wählton</translation>
    </message>
    <message>
        <source>diameter of a section or tap; or gauge_awg</source>
        <translation>Durchmesser eines Abschnitts oder einer Stichleitung; oder gauge_awg</translation>
    </message>
    <message>
        <source>digit %1</source>
        <translation>Ziffer %1</translation>
    </message>
    <message>
        <source>digits %1-%2</source>
        <translation>Ziffern %1-%2</translation>
    </message>
    <message>
        <source>direct current through the pair, off-hook</source>
        <translation>Gleichstrom durch die Doppelader, abgehoben</translation>
    </message>
    <message>
        <source>direct voltage between the wires, on-hook</source>
        <translation>Gleichspannung zwischen den Adern, aufgelegt</translation>
    </message>
    <message>
        <source>directory number</source>
        <translation>Rufnummer</translation>
    </message>
    <message>
        <source>disconnect</source>
        <translation>Abschaltung</translation>
    </message>
    <message>
        <source>disconnection</source>
        <translation>Abschaltung</translation>
    </message>
    <message>
        <source>dispatcher</source>
        <translation>Disposition</translation>
    </message>
    <message>
        <source>dn_%1: %2</source>
        <translation>Rufnummer %1: %2</translation>
    </message>
    <message>
        <source>does not count: %1</source>
        <translation>zählt nicht: %1</translation>
    </message>
    <message>
        <source>does not exist</source>
        <translation>gibt es nicht</translation>
    </message>
    <message>
        <source>does not follow the event before it</source>
        <translation>folgt nicht auf das Ereignis davor</translation>
    </message>
    <message>
        <source>does not hold the claims of a certificate</source>
        <translation>enthält nicht die Angaben eines Zertifikats</translation>
    </message>
    <message>
        <source>does not ring</source>
        <translation>klingelt nicht</translation>
    </message>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>down</source>
        <translation>steht nicht</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>trocken</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation>fällig %1</translation>
    </message>
    <message>
        <source>due today</source>
        <translation>heute fällig</translation>
    </message>
    <message>
        <source>e.g. 09:00-11:00</source>
        <translation>z. B. 09:00-11:00</translation>
    </message>
    <message>
        <source>e.g. 217</source>
        <translation>z. B. 217</translation>
    </message>
    <message>
        <source>e.g. 447</source>
        <translation>z. B. 447</translation>
    </message>
    <message>
        <source>e.g. loss set</source>
        <translation>z. B. Dämpfungsmesser</translation>
    </message>
    <message>
        <source>e.g. mains socket in the hall, no battery</source>
        <translation>z. B. Steckdose im Flur, kein Akku</translation>
    </message>
    <message>
        <source>e.g. two people, ladder, bucket truck</source>
        <translation>z. B. zwei Personen, Leiter, Hubwagen</translation>
    </message>
    <message>
        <source>each SPID accepted by the switch</source>
        <translation>jede SPID von der Vermittlung angenommen</translation>
    </message>
    <message>
        <source>each one seen</source>
        <translation>jeder gesehen</translation>
    </message>
    <message>
        <source>each section with gauge and length, taps and load coils, from the office</source>
        <translation>jeder Abschnitt mit Drahtstärke und Länge, Stichleitungen und Pupinspulen, von der Vermittlungsstelle aus</translation>
    </message>
    <message>
        <source>each service out on each channel, each number called in</source>
        <translation>jeder Dienst abgehend auf jedem Kanal, jede Rufnummer ankommend angerufen</translation>
    </message>
    <message>
        <source>each terminal has a TEI of its assignment</source>
        <translation>jedes Endgerät hat einen TEI nach seiner Zuweisung</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>leer</translation>
    </message>
    <message>
        <source>empty: as the office has it</source>
        <translation>leer: wie die Vermittlungsstelle</translation>
    </message>
    <message>
        <source>empty: as the protocol variant has it</source>
        <translation>leer: wie die Protokollvariante</translation>
    </message>
    <message>
        <source>empty: each keeps its day</source>
        <translation>leer: jeder behält seinen Tag</translation>
    </message>
    <message>
        <source>empty: now</source>
        <translation>leer: jetzt</translation>
    </message>
    <message>
        <source>ended %1 days ago</source>
        <translation>vor %1 Tagen abgelaufen</translation>
    </message>
    <message>
        <source>ended yesterday</source>
        <translation>gestern abgelaufen</translation>
    </message>
    <message>
        <source>ends in %1 days</source>
        <translation>läuft in %1 Tagen ab</translation>
    </message>
    <message>
        <source>ends today</source>
        <translation>läuft heute ab</translation>
    </message>
    <message>
        <source>ends tomorrow</source>
        <translation>läuft morgen ab</translation>
    </message>
    <message>
        <source>ends with no endorsement</source>
        <translation>endet ohne Beglaubigung</translation>
    </message>
    <message>
        <source>enter an instrument from its label</source>
        <translation>ein Messgerät nach seinem Etikett eintragen</translation>
    </message>
    <message>
        <source>enter an order on site</source>
        <translation>einen Auftrag vor Ort eintragen</translation>
    </message>
    <message>
        <source>error</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>error free</source>
        <translation>fehlerfrei</translation>
    </message>
    <message>
        <source>error-rate run, BERT</source>
        <translation>Bitfehlermessung, BERT</translation>
    </message>
    <message>
        <source>errored</source>
        <translation>fehlerhaft</translation>
    </message>
    <message>
        <source>errored seconds</source>
        <translation>fehlerhafte Sekunden</translation>
    </message>
    <message>
        <source>evaluated by the %1 method</source>
        <translation>ausgewertet nach dem Verfahren %1</translation>
    </message>
    <message>
        <source>event %1</source>
        <translation>Ereignis %1</translation>
    </message>
    <message>
        <source>event %1 of the log is missing before this one</source>
        <translation>vor diesem fehlt Ereignis %1 des Protokolls</translation>
    </message>
    <message>
        <source>event %1 of the log of %2</source>
        <translation>Ereignis %1 des Protokolls von %2</translation>
    </message>
    <message>
        <source>event %1 was expected here</source>
        <translation>hier wurde Ereignis %1 erwartet</translation>
    </message>
    <message>
        <source>event bears another station</source>
        <translation>das Ereignis trägt eine andere Station</translation>
    </message>
    <message>
        <source>event does not continue the log of the station</source>
        <translation>das Ereignis setzt das Protokoll der Station nicht fort</translation>
    </message>
    <message>
        <source>event does not follow the event before it</source>
        <translation>das Ereignis folgt nicht auf das davor</translation>
    </message>
    <message>
        <source>event was changed after it was recorded</source>
        <translation>das Ereignis wurde geändert, nachdem es eingetragen war</translation>
    </message>
    <message>
        <source>every day</source>
        <translation>täglich</translation>
    </message>
    <message>
        <source>every error sent was seen</source>
        <translation>jeder eingefügte Fehler wurde gesehen</translation>
    </message>
    <message>
        <source>every section of %1</source>
        <translation>jeder mit %1 verzeichnete Abschnitt</translation>
    </message>
    <message>
        <source>evidence was struck out: %1</source>
        <translation>Belege wurden gestrichen: %1</translation>
    </message>
    <message>
        <source>excepted</source>
        <translation>ausgenommen</translation>
    </message>
    <message>
        <source>exception</source>
        <translation>Ausnahme</translation>
    </message>
    <message>
        <source>exception of order %1</source>
        <translation>Ausnahme zu Auftrag %1</translation>
    </message>
    <message>
        <source>exception voided</source>
        <translation>Ausnahme aufgehoben</translation>
    </message>
    <message>
        <source>export unpublished numbers</source>
        <translation>nicht veröffentlichte Rufnummern ausgeben</translation>
    </message>
    <message>
        <source>fact %1</source>
        <translation>Eintrag %1</translation>
    </message>
    <message>
        <source>fact corrected</source>
        <translation>Eintrag berichtigt</translation>
    </message>
    <message>
        <source>fact voided</source>
        <translation>Aufzeichnung für ungültig erklärt</translation>
    </message>
    <message>
        <source>facts recorded</source>
        <translation>Ergebnisse erfasst</translation>
    </message>
    <message>
        <source>failed</source>
        <translation>fehlgeschlagen</translation>
    </message>
    <message>
        <source>failed, struck out</source>
        <translation>misslungen, gestrichen</translation>
    </message>
    <message>
        <source>far end</source>
        <translation>Gegenstelle</translation>
    </message>
    <message>
        <source>feed</source>
        <translation>Speisung</translation>
    </message>
    <message>
        <source>feed of carrier equipment</source>
        <translation>Speisung von Trägergeräten</translation>
    </message>
    <message>
        <source>fixed</source>
        <translation>fest</translation>
    </message>
    <message>
        <source>fixed, %1</source>
        <translation>fest, %1</translation>
    </message>
    <message>
        <source>fixed, 0</source>
        <translation>fest, 0</translation>
    </message>
    <message>
        <source>folded</source>
        <translation>zugeklappt</translation>
    </message>
    <message>
        <source>for diagnosis</source>
        <translation>zur Eingrenzung</translation>
    </message>
    <message>
        <source>for the record; never on the certificate</source>
        <translation>für den Datenbestand; nie auf dem Zertifikat</translation>
    </message>
    <message>
        <source>foreign battery</source>
        <translation>fremde Batterie</translation>
    </message>
    <message>
        <source>foreign keys</source>
        <translation>Fremdschlüssel</translation>
    </message>
    <message>
        <source>foreign voltage</source>
        <translation>Fremdspannung</translation>
    </message>
    <message>
        <source>from a network beyond an interworking point</source>
        <translation>von einem Netz hinter einem Netzübergang</translation>
    </message>
    <message>
        <source>from a terminal</source>
        <translation>von einem Endgerät</translation>
    </message>
    <message>
        <source>from a transit network</source>
        <translation>von einem Transitnetz</translation>
    </message>
    <message>
        <source>from any number</source>
        <translation>von einer beliebigen Rufnummer</translation>
    </message>
    <message>
        <source>from both wires to ground, C-message weighted, off-hook towards the quiet termination</source>
        <translation>von beiden Adern gegen Erde, C-bewertet, abgehoben gegen den Ruheabschluss</translation>
    </message>
    <message>
        <source>from memory</source>
        <translation>aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>from the international network</source>
        <translation>vom internationalen Netz</translation>
    </message>
    <message>
        <source>from the private network at the far end</source>
        <translation>vom privaten Netz auf der Gegenseite</translation>
    </message>
    <message>
        <source>from the private network at this end</source>
        <translation>vom privaten Netz auf dieser Seite</translation>
    </message>
    <message>
        <source>from the public network at the far end</source>
        <translation>vom öffentlichen Netz auf der Gegenseite</translation>
    </message>
    <message>
        <source>from the serving switch</source>
        <translation>von der eigenen Vermittlung</translation>
    </message>
    <message>
        <source>garbage at the end of the document</source>
        <translation>überzählige Zeichen am Ende</translation>
    </message>
    <message>
        <source>gauge of a section or tap; or diameter_mm</source>
        <translation>Drahtstärke eines Abschnitts oder einer Stichleitung; oder diameter_mm</translation>
    </message>
    <message>
        <source>goes into digests as it lies in memory</source>
        <translation>geht in Prüfsummen ein, wie es im Speicher liegt</translation>
    </message>
    <message>
        <source>good</source>
        <translation>gut</translation>
    </message>
    <message>
        <source>good below %1</source>
        <translation>gut unter %1</translation>
    </message>
    <message>
        <source>good from %1</source>
        <translation>gut ab %1</translation>
    </message>
    <message>
        <source>good to %1</source>
        <translation>gut bis %1</translation>
    </message>
    <message>
        <source>hand an order on</source>
        <translation>einen Auftrag weitergeben</translation>
    </message>
    <message>
        <source>hand orders to vans, or take their work in</source>
        <translation>Aufträge an Wagen ausgeben oder deren Arbeit übernehmen</translation>
    </message>
    <message>
        <source>has %1 entries, and the run lasts %2 s</source>
        <translation>hat %1 Einträge, und der Messlauf dauert %2 s</translation>
    </message>
    <message>
        <source>has %1 fields where the header has %2</source>
        <translation>hat %1 Felder, die Kopfzeile hat %2</translation>
    </message>
    <message numerus="yes">
        <source>has %n columns</source>
        <translation><numerusform>hat %n Spalte</numerusform><numerusform>hat %n Spalten</numerusform></translation>
    </message>
    <message>
        <source>has a "%1" above its "%2"</source>
        <translation>hat ein „%1“ über seinem „%2“</translation>
    </message>
    <message>
        <source>has a "run_confidence" that is not between 0 and 1</source>
        <translation>hat ein „run_confidence“, das nicht zwischen 0 und 1 liegt</translation>
    </message>
    <message>
        <source>has a carriage return inside a field that is not quoted</source>
        <translation>hat einen Wagenrücklauf in einem Feld ohne Anführungszeichen</translation>
    </message>
    <message>
        <source>has a point outside the field</source>
        <translation>hat einen Punkt außerhalb des Feldes</translation>
    </message>
    <message>
        <source>has a quotation mark inside a field that is not quoted</source>
        <translation>hat ein Anführungszeichen in einem Feld ohne Anführungszeichen</translation>
    </message>
    <message>
        <source>has a quotation mark that is never closed</source>
        <translation>hat ein Anführungszeichen, das nie geschlossen wird</translation>
    </message>
    <message>
        <source>has an odd number of coordinates</source>
        <translation>hat eine ungerade Zahl von Koordinaten</translation>
    </message>
    <message>
        <source>has more than %1 entries</source>
        <translation>hat mehr als %1 Einträge</translation>
    </message>
    <message>
        <source>has no header for the map to lead from</source>
        <translation>hat keine Kopfzeile, von der die Zuordnung ausgehen könnte</translation>
    </message>
    <message>
        <source>has rows that are refused</source>
        <translation>hat Zeilen, die abgelehnt werden</translation>
    </message>
    <message>
        <source>has text behind a closing quotation mark</source>
        <translation>hat Text hinter einem schließenden Anführungszeichen</translation>
    </message>
    <message>
        <source>hazard</source>
        <translation>Gefahr</translation>
    </message>
    <message>
        <source>hazard closed</source>
        <translation>Gefahr behoben</translation>
    </message>
    <message>
        <source>heard</source>
        <translation>zu hören</translation>
    </message>
    <message>
        <source>heard off-hook, and broken by a digit</source>
        <translation>abgehoben zu hören, verstummt bei einer Ziffer</translation>
    </message>
    <message>
        <source>highest AC voltage</source>
        <translation>höchste Wechselspannung</translation>
    </message>
    <message>
        <source>highest DC voltage</source>
        <translation>höchste Gleichspannung</translation>
    </message>
    <message>
        <source>holds</source>
        <translation>gilt</translation>
    </message>
    <message>
        <source>holds a character that is not seen</source>
        <translation>enthält ein unsichtbares Zeichen</translation>
    </message>
    <message>
        <source>holds a control character</source>
        <translation>enthält ein Steuerzeichen</translation>
    </message>
    <message>
        <source>holds a key twice in one object</source>
        <translation>enthält einen Schlüssel zweimal in einem Objekt</translation>
    </message>
    <message>
        <source>holds a line break</source>
        <translation>enthält einen Zeilenumbruch</translation>
    </message>
    <message>
        <source>holds an unknown code: %1</source>
        <translation>enthält einen unbekannten Code: %1</translation>
    </message>
    <message>
        <source>holds files that no whole export left there: name an empty folder</source>
        <translation>enthält Dateien, die keine vollständige Ausgabe hinterließ: bitte einen leeren Ordner nennen</translation>
    </message>
    <message>
        <source>holds half a character</source>
        <translation>enthält ein halbes Zeichen</translation>
    </message>
    <message>
        <source>holds half of a surrogate pair, which is no text</source>
        <translation>enthält ein halbes Ersatzzeichenpaar, das kein Text ist</translation>
    </message>
    <message>
        <source>holds more than %1 seconds</source>
        <translation>enthält mehr als %1 Sekunden</translation>
    </message>
    <message>
        <source>holds no head of a log</source>
        <translation>enthält keinen Kopf eines Protokolls</translation>
    </message>
    <message>
        <source>holds no key of 64 hexadecimal digits</source>
        <translation>enthält keinen Schlüssel aus 64 hexadezimalen Ziffern</translation>
    </message>
    <message>
        <source>holds no key of a station: it is written in the van by key export</source>
        <translation>enthält keinen Schlüssel einer Station: im Wagen wird er mit key export geschrieben</translation>
    </message>
    <message>
        <source>holds no longer</source>
        <translation>besteht nicht mehr</translation>
    </message>
    <message>
        <source>holds no public key</source>
        <translation>enthält keinen öffentlichen Schlüssel</translation>
    </message>
    <message>
        <source>holds no records yet; the owner of the database opens it first</source>
        <translation>enthält noch keinen Datenbestand; zuerst öffnet sie der Eigentümer der Datenbank</translation>
    </message>
    <message>
        <source>holds no second</source>
        <translation>enthält keine Sekunde</translation>
    </message>
    <message>
        <source>holds none of dc_resistance_ohm, loss_db and makeup</source>
        <translation>enthält weder dc_resistance_ohm noch loss_db noch makeup</translation>
    </message>
    <message>
        <source>holds something that is no name</source>
        <translation>enthält etwas, das kein Name ist</translation>
    </message>
    <message>
        <source>hours that were agreed, e.g. 09:00-11:00</source>
        <translation>vereinbarte Uhrzeit, z. B. 09:00-11:00</translation>
    </message>
    <message>
        <source>identifier error</source>
        <translation>Kennung fehlerhaft</translation>
    </message>
    <message>
        <source>identifiers</source>
        <translation>Kennungen</translation>
    </message>
    <message>
        <source>illegal number</source>
        <translation>unzulässige Zahl</translation>
    </message>
    <message>
        <source>illegal value</source>
        <translation>unzulässiger Wert</translation>
    </message>
    <message>
        <source>in</source>
        <translation>kommend</translation>
    </message>
    <message>
        <source>in service by order %1</source>
        <translation>in Betrieb durch Auftrag %1</translation>
    </message>
    <message>
        <source>in step</source>
        <translation>im Gleichlauf</translation>
    </message>
    <message>
        <source>in sync</source>
        <translation>im Gleichlauf</translation>
    </message>
    <message>
        <source>in sync at U</source>
        <translation>im Gleichlauf an U</translation>
    </message>
    <message>
        <source>in sync at U and at S/T</source>
        <translation>im Gleichlauf an U und an S/T</translation>
    </message>
    <message>
        <source>in sync through the NT</source>
        <translation>im Gleichlauf durch den NT</translation>
    </message>
    <message>
        <source>in sync; wait 15 s after a cold start</source>
        <translation>im Gleichlauf; nach einem Kaltstart 15 s warten</translation>
    </message>
    <message>
        <source>incomplete</source>
        <translation>unvollständig</translation>
    </message>
    <message>
        <source>induced</source>
        <translation>induziert</translation>
    </message>
    <message>
        <source>induced by power lines beside the cable</source>
        <translation>Einkopplung von Starkstromleitungen neben dem Kabel</translation>
    </message>
    <message>
        <source>inductance of a load coil</source>
        <translation>Induktivität einer Pupinspule</translation>
    </message>
    <message>
        <source>insertion loss in dB</source>
        <translation>Einfügungsdämpfung in dB</translation>
    </message>
    <message>
        <source>insertion loss, dB</source>
        <translation>Einfügungsdämpfung, dB</translation>
    </message>
    <message>
        <source>installer</source>
        <translation>Monteur</translation>
    </message>
    <message>
        <source>instrument added</source>
        <translation>Messgerät eingetragen</translation>
    </message>
    <message>
        <source>instrument changed</source>
        <translation>Messgerät geändert</translation>
    </message>
    <message>
        <source>instrument labelled</source>
        <translation>Messgerät vom Etikett eingetragen</translation>
    </message>
    <message>
        <source>insulation</source>
        <translation>Isolation</translation>
    </message>
    <message>
        <source>international</source>
        <translation>international</translation>
    </message>
    <message>
        <source>interworking</source>
        <translation>Netzübergang</translation>
    </message>
    <message>
        <source>invalid UTF8 string</source>
        <translation>ungültiges UTF-8</translation>
    </message>
    <message>
        <source>invalid escape sequence</source>
        <translation>ungültige Escape-Folge</translation>
    </message>
    <message>
        <source>invalid message</source>
        <translation>ungültige Nachricht</translation>
    </message>
    <message>
        <source>inverted</source>
        <translation>invertiert</translation>
    </message>
    <message>
        <source>is %1 and still names "%2", which has %3: name the source of %1 as its "%4", or leave it empty</source>
        <translation>ist %1 und nennt noch „%2“, wo %3 steht: die Quelle von %1 als „%4“ nennen oder leer lassen</translation>
    </message>
    <message>
        <source>is UTF-16: save it as UTF-8</source>
        <translation>ist UTF-16: bitte als UTF-8 speichern</translation>
    </message>
    <message>
        <source>is a backup and is not worked in; restore it</source>
        <translation>ist eine Sicherung, in der nicht gearbeitet wird; bitte wiederherstellen</translation>
    </message>
    <message>
        <source>is a database of another program</source>
        <translation>ist eine Datenbank eines anderen Programms</translation>
    </message>
    <message>
        <source>is a device or a pipe, and nothing is written onto one</source>
        <translation>ist ein Gerät oder eine Pipe, und darauf wird nichts geschrieben</translation>
    </message>
    <message>
        <source>is a device, not a file</source>
        <translation>ist ein Gerät, keine Datei</translation>
    </message>
    <message>
        <source>is a folder, not a file</source>
        <translation>ist ein Ordner, keine Datei</translation>
    </message>
    <message>
        <source>is a folder; give the name of a file</source>
        <translation>ist ein Ordner; bitte den Namen einer Datei angeben</translation>
    </message>
    <message>
        <source>is a form of bundle that this program does not know</source>
        <translation>ist eine Form von Bündel, die dieses Programm nicht kennt</translation>
    </message>
    <message>
        <source>is a link to something that is not there</source>
        <translation>ist ein Verweis auf etwas, das es nicht gibt</translation>
    </message>
    <message>
        <source>is a name that a database gives to what it keeps beside it</source>
        <translation>ist ein Name, den eine Datenbank ihren Nebendateien gibt</translation>
    </message>
    <message>
        <source>is a name that a database keeps for itself</source>
        <translation>ist ein Name, den eine Datenbank für sich behält</translation>
    </message>
    <message>
        <source>is a pipe, not a file; - reads standard input</source>
        <translation>ist eine Pipe, keine Datei; - liest die Standardeingabe</translation>
    </message>
    <message>
        <source>is a socket, not a file</source>
        <translation>ist ein Socket, keine Datei</translation>
    </message>
    <message>
        <source>is an empty database</source>
        <translation>ist eine leere Datenbank</translation>
    </message>
    <message>
        <source>is another order than its entry says</source>
        <translation>ist ein anderer Auftrag, als der Eintrag sagt</translation>
    </message>
    <message>
        <source>is before the arrival</source>
        <translation>liegt vor der Ankunft</translation>
    </message>
    <message>
        <source>is cut</source>
        <translation>ist abgeschnitten</translation>
    </message>
    <message>
        <source>is damaged and was left as it is; restore a backup (%1)</source>
        <translation>ist beschädigt und blieb, wie es ist; bitte eine Sicherung wiederherstellen (%1)</translation>
    </message>
    <message>
        <source>is empty</source>
        <translation>ist leer</translation>
    </message>
    <message>
        <source>is empty, and no backup of any records</source>
        <translation>ist leer und keine Sicherung eines Datenbestands</translation>
    </message>
    <message>
        <source>is empty, and was not taken for new records; remove it to begin anew, or restore a backup</source>
        <translation>ist leer und wurde nicht für einen neuen Datenbestand genommen; zum Neubeginn entfernen oder eine Sicherung wiederherstellen</translation>
    </message>
    <message>
        <source>is empty: a header row is required</source>
        <translation>ist leer: eine Kopfzeile ist nötig</translation>
    </message>
    <message>
        <source>is empty; it must be one of %1</source>
        <translation>ist leer; möglich sind nur %1</translation>
    </message>
    <message>
        <source>is gone from the records</source>
        <translation>ist aus dem Datenbestand verschwunden</translation>
    </message>
    <message>
        <source>is in the records, but no event tells of it</source>
        <translation>steht im Datenbestand, aber kein Ereignis berichtet davon</translation>
    </message>
    <message>
        <source>is known already</source>
        <translation>ist schon bekannt</translation>
    </message>
    <message>
        <source>is longer than %1 characters</source>
        <translation>ist länger als %1 Zeichen</translation>
    </message>
    <message>
        <source>is longer than 60 characters</source>
        <translation>ist länger als 60 Zeichen</translation>
    </message>
    <message>
        <source>is longer than the %1 bytes that are taken</source>
        <translation>ist länger als die %1 Byte, die angenommen werden</translation>
    </message>
    <message>
        <source>is mapped twice</source>
        <translation>ist zweimal zugeordnet</translation>
    </message>
    <message>
        <source>is more than the length of the run allows (%1)</source>
        <translation>ist mehr, als die Dauer des Messlaufs zulässt (%1)</translation>
    </message>
    <message>
        <source>is needed before the card is recorded; what is typed is kept</source>
        <translation>wird gebraucht, bevor die Karte erfasst wird; Eingegebenes bleibt erhalten</translation>
    </message>
    <message>
        <source>is no JSON object</source>
        <translation>ist kein JSON-Objekt</translation>
    </message>
    <message>
        <source>is no PDF of Qt's writer: %1</source>
        <translation>ist kein PDF, wie Qt es schreibt: %1</translation>
    </message>
    <message>
        <source>is no PDF: it has no "startxref"</source>
        <translation>ist kein PDF: es hat kein „startxref“</translation>
    </message>
    <message>
        <source>is no SHA-256</source>
        <translation>ist kein SHA-256</translation>
    </message>
    <message>
        <source>is no address of a server; it reads postgresql://host:port/database, with signs like @ and / in a name or password as %40 and %2F</source>
        <translation>ist keine Adresse eines Servers; sie lautet postgresql://rechner:port/datenbank, mit Zeichen wie @ und / in Namen oder Passwort als %40 und %2F</translation>
    </message>
    <message>
        <source>is no change of an office's lines</source>
        <translation>ist keine Änderung der Anschlüsse einer Vermittlungsstelle</translation>
    </message>
    <message>
        <source>is no date</source>
        <translation>ist kein Datum</translation>
    </message>
    <message>
        <source>is no exception</source>
        <translation>ist keine Ausnahme</translation>
    </message>
    <message>
        <source>is no file</source>
        <translation>ist keine Datei</translation>
    </message>
    <message>
        <source>is no file, and nothing is written onto it</source>
        <translation>ist keine Datei, und es wird nichts darauf geschrieben</translation>
    </message>
    <message>
        <source>is no file; take it away</source>
        <translation>ist keine Datei; bitte entfernen</translation>
    </message>
    <message>
        <source>is no folder</source>
        <translation>ist kein Ordner</translation>
    </message>
    <message>
        <source>is no list</source>
        <translation>ist keine Liste</translation>
    </message>
    <message>
        <source>is no object</source>
        <translation>ist kein Objekt</translation>
    </message>
    <message>
        <source>is no outcome</source>
        <translation>ist kein Ergebnis</translation>
    </message>
    <message>
        <source>is no signature</source>
        <translation>ist keine Signatur</translation>
    </message>
    <message>
        <source>is no text</source>
        <translation>ist kein Text</translation>
    </message>
    <message>
        <source>is no time</source>
        <translation>ist keine Zeit</translation>
    </message>
    <message>
        <source>is no witness: the head of the log in it lost its signature</source>
        <translation>ist kein Zeuge: der Kopf des Protokolls darin hat seine Signatur verloren</translation>
    </message>
    <message>
        <source>is not UTF-8</source>
        <translation>ist kein UTF-8</translation>
    </message>
    <message>
        <source>is not a UUID</source>
        <translation>ist keine UUID</translation>
    </message>
    <message>
        <source>is not a certificate that this program can read</source>
        <translation>ist kein Zertifikat, das dieses Programm lesen kann</translation>
    </message>
    <message>
        <source>is not a column</source>
        <translation>ist keine Spalte</translation>
    </message>
    <message>
        <source>is not a database</source>
        <translation>ist keine Datenbank</translation>
    </message>
    <message>
        <source>is not a file</source>
        <translation>ist keine Datei</translation>
    </message>
    <message>
        <source>is not a known key</source>
        <translation>ist kein bekannter Schlüssel</translation>
    </message>
    <message>
        <source>is not a parameter</source>
        <translation>ist kein Parameter</translation>
    </message>
    <message>
        <source>is not accepted</source>
        <translation>ist nicht abgenommen</translation>
    </message>
    <message>
        <source>is not bound</source>
        <translation>ist nicht gebunden</translation>
    </message>
    <message>
        <source>is not in small letters</source>
        <translation>steht nicht in Kleinbuchstaben</translation>
    </message>
    <message>
        <source>is not in the program</source>
        <translation>ist nicht im Programm</translation>
    </message>
    <message>
        <source>is not known: columns, values and ignore are</source>
        <translation>ist nicht bekannt: bekannt sind columns, values und ignore</translation>
    </message>
    <message>
        <source>is not the key of this name any more; put the true one back, or have a supervisor make a new one: key renew</source>
        <translation>ist nicht mehr der Schlüssel dieses Namens; bitte den echten zurücklegen oder die Aufsicht einen neuen machen lassen: key renew</translation>
    </message>
    <message>
        <source>is not valid JSON: %1</source>
        <translation>ist kein gültiges JSON: %1</translation>
    </message>
    <message>
        <source>is not what its digest says</source>
        <translation>ist nicht das, was die Prüfsumme sagt</translation>
    </message>
    <message>
        <source>is not written as a certificate is</source>
        <translation>ist nicht so geschrieben wie ein Zertifikat</translation>
    </message>
    <message>
        <source>is not written as the claims of a certificate are</source>
        <translation>ist nicht geschrieben, wie es die Angaben eines Zertifikats sind</translation>
    </message>
    <message>
        <source>is not: whose key, its fingerprint, 64 hexadecimal digits</source>
        <translation>ist nicht: wessen Schlüssel, sein Fingerabdruck, 64 hexadezimale Ziffern</translation>
    </message>
    <message>
        <source>is of an older form; open it once for writing to bring it up to date</source>
        <translation>hat eine ältere Form; einmal zum Schreiben öffnen, um es auf den neuen Stand zu bringen</translation>
    </message>
    <message>
        <source>is of an older form; the owner of the database brings it up to date</source>
        <translation>hat eine ältere Form; der Eigentümer der Datenbank bringt sie auf den neuen Stand</translation>
    </message>
    <message>
        <source>is of another order</source>
        <translation>gehört zu einem anderen Auftrag</translation>
    </message>
    <message>
        <source>is of no area: it belongs to personal numbers</source>
        <translation>gehört zu keinem Gebiet: es ist die von persönlichen Rufnummern</translation>
    </message>
    <message>
        <source>is of no area: it belongs to special services</source>
        <translation>gehört zu keinem Gebiet: es ist die von Sonderdiensten</translation>
    </message>
    <message>
        <source>is of no area: it is free of charge for the caller</source>
        <translation>gehört zu keinem Gebiet: sie ist für den Anrufer gebührenfrei</translation>
    </message>
    <message>
        <source>is required and missing</source>
        <translation>ist erforderlich und fehlt</translation>
    </message>
    <message>
        <source>is required and missing: the id of the safety card that read the hazard</source>
        <translation>ist nötig und fehlt: die Kennung der Sicherheitskarte, die die Gefahr zeigte</translation>
    </message>
    <message>
        <source>is required where the run has no seconds</source>
        <translation>ist nötig, wo der Messlauf keine Sekunden hat</translation>
    </message>
    <message>
        <source>is set aside for an expansion of the plan</source>
        <translation>ist für eine Erweiterung des Plans vorgesehen</translation>
    </message>
    <message>
        <source>is set aside for announcements that are charged for</source>
        <translation>ist für gebührenpflichtige Ansagen vorgesehen</translation>
    </message>
    <message>
        <source>is set aside for information services</source>
        <translation>ist für Auskunftsdienste vorgesehen</translation>
    </message>
    <message>
        <source>is set aside for reaching carriers</source>
        <translation>ist für den Zugang zu Netzbetreibern vorgesehen</translation>
    </message>
    <message>
        <source>is set aside for tests of the plant</source>
        <translation>ist für Prüfungen des Netzes vorgesehen</translation>
    </message>
    <message>
        <source>is signed with "key" and "signature", both texts</source>
        <translation>ist mit „key“ und „signature“ signiert, beides Texte</translation>
    </message>
    <message>
        <source>is the database itself</source>
        <translation>ist die Datenbank selbst</translation>
    </message>
    <message>
        <source>is the id of another decision</source>
        <translation>ist die Kennung einer anderen Entscheidung</translation>
    </message>
    <message>
        <source>is the id of another fact</source>
        <translation>ist die Kennung eines anderen Eintrags</translation>
    </message>
    <message>
        <source>is the new pair, and the pair was not changed</source>
        <translation>ist die neue Doppelader, und die Doppelader wurde nicht gewechselt</translation>
    </message>
    <message>
        <source>is the number of another certificate</source>
        <translation>ist die Nummer eines anderen Zertifikats</translation>
    </message>
    <message>
        <source>is there already with other limits</source>
        <translation>ist schon da, mit anderen Grenzwerten</translation>
    </message>
    <message>
        <source>is there already, and is not a backup; it was left as it is</source>
        <translation>ist schon da und ist keine Sicherung; es blieb, wie es ist</translation>
    </message>
    <message>
        <source>is there and is not %1: it is not replaced; give another name</source>
        <translation>ist da und ist nicht %1: es wird nicht ersetzt; bitte einen anderen Namen angeben</translation>
    </message>
    <message>
        <source>is too long for a file of public keys</source>
        <translation>ist zu lang für eine Datei mit öffentlichen Schlüsseln</translation>
    </message>
    <message>
        <source>is too long for the claims of a certificate</source>
        <translation>ist zu lang für die Angaben eines Zertifikats</translation>
    </message>
    <message>
        <source>is too long: at most %1 MB</source>
        <translation>ist zu lang: höchstens %1 MB</translation>
    </message>
    <message>
        <source>is too long: at most %1 bytes</source>
        <translation>ist zu lang: höchstens %1 Byte</translation>
    </message>
    <message>
        <source>is true or left out</source>
        <translation>ist true oder fehlt</translation>
    </message>
    <message>
        <source>is written with characters that stand for others</source>
        <translation>enthält Zeichen, die für andere stehen</translation>
    </message>
    <message>
        <source>issue %1</source>
        <translation>Ausgabe %1</translation>
    </message>
    <message>
        <source>issue a certificate</source>
        <translation>ein Zertifikat ausstellen</translation>
    </message>
    <message>
        <source>issuer added</source>
        <translation>Aussteller eingetragen</translation>
    </message>
    <message>
        <source>issuer changed</source>
        <translation>Aussteller geändert</translation>
    </message>
    <message>
        <source>it cannot be made again byte for byte by this version or this key.</source>
        <translation>es lässt sich mit dieser Version oder diesem Schlüssel nicht Byte für Byte wieder herstellen.</translation>
    </message>
    <message>
        <source>it cannot be read</source>
        <translation>es lässt sich nicht lesen</translation>
    </message>
    <message>
        <source>it failed</source>
        <translation>er misslang</translation>
    </message>
    <message>
        <source>it waits for %1</source>
        <translation>er wartet auf %1</translation>
    </message>
    <message>
        <source>it waits for you: please call the number below</source>
        <translation>er wartet auf Sie: Bitte rufen Sie die Nummer unten an</translation>
    </message>
    <message>
        <source>its SPID, where the protocol variant has one</source>
        <translation>seine SPID, wo die Protokollvariante eine hat</translation>
    </message>
    <message>
        <source>its TEI: auto, or a number of 0 to 63</source>
        <translation>sein TEI: auto oder eine Zahl von 0 bis 63</translation>
    </message>
    <message>
        <source>its certificate was not issued yet</source>
        <translation>sein Zertifikat wurde noch nicht ausgestellt</translation>
    </message>
    <message>
        <source>its clock was ahead</source>
        <translation>ihre Uhr ging vor</translation>
    </message>
    <message>
        <source>its keys stand</source>
        <translation>seine Schlüssel stehen</translation>
    </message>
    <message>
        <source>its log cannot be written into it</source>
        <translation>ihr Protokoll lässt sich nicht in sie schreiben</translation>
    </message>
    <message>
        <source>its name in the network</source>
        <translation>sein Name im Netz</translation>
    </message>
    <message>
        <source>its run failed</source>
        <translation>der Messlauf misslang</translation>
    </message>
    <message>
        <source>joined %1 events of station %2, and they are not there as they came</source>
        <translation>nahm %1 Ereignisse der Station %2 auf, und sie stehen nicht da, wie sie kamen</translation>
    </message>
    <message>
        <source>jumper run</source>
        <translation>Rangierung gelegt</translation>
    </message>
    <message>
        <source>kept nowhere; may be left empty</source>
        <translation>wird nirgends aufbewahrt; darf leer bleiben</translation>
    </message>
    <message>
        <source>key in %1</source>
        <translation>eintippen %1</translation>
    </message>
    <message>
        <source>key of a protocol variant</source>
        <translation>Kürzel einer Protokollvariante</translation>
    </message>
    <message>
        <source>key of the instrument, as records name it</source>
        <translation>Kürzel des Messgeräts, wie es Aufzeichnungen nennen</translation>
    </message>
    <message>
        <source>key of the office, as orders name it</source>
        <translation>Kürzel der Vermittlungsstelle, wie es Aufträge nennen</translation>
    </message>
    <message>
        <source>key of the person, as orders and records name it</source>
        <translation>Kürzel der Person, wie es Aufträge und Aufzeichnungen nennen</translation>
    </message>
    <message>
        <source>key of the serving office, which must be in the register</source>
        <translation>Kürzel der Vermittlungsstelle, die eingetragen sein muss</translation>
    </message>
    <message>
        <source>key of who goes there</source>
        <translation>Kürzel der Person, die hinfährt</translation>
    </message>
    <message>
        <source>key or name; printed on the certificate</source>
        <translation>Kürzel oder Name; steht auf dem Zertifikat</translation>
    </message>
    <message>
        <source>keys made</source>
        <translation>Schlüssel erzeugt</translation>
    </message>
    <message>
        <source>keys renewed</source>
        <translation>Schlüssel erneuert</translation>
    </message>
    <message>
        <source>keys, hours, dogs</source>
        <translation>Schlüssel, Zeiten, Hunde</translation>
    </message>
    <message>
        <source>keys, hours, dogs; may be left empty</source>
        <translation>Schlüssel, Zeiten, Hunde; kann leer bleiben</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>kinds</source>
        <translation>Arten</translation>
    </message>
    <message>
        <source>kohm</source>
        <translation>kOhm</translation>
    </message>
    <message>
        <source>label=number joined by ; (unpublished: never on a customer's paper)</source>
        <translation>Bezeichnung=Rufnummer, verbunden durch ; (nicht veröffentlicht: nie auf einem Papier für Kunden)</translation>
    </message>
    <message>
        <source>label=number joined by ; may be left empty</source>
        <translation>Bezeichnung=Rufnummer, verbunden durch ; kann leer bleiben</translation>
    </message>
    <message>
        <source>lacks "%1"</source>
        <translation>es fehlt „%1“</translation>
    </message>
    <message>
        <source>layer</source>
        <translation>Schicht</translation>
    </message>
    <message>
        <source>layer %1 went down while it lasted, at %2</source>
        <translation>Schicht %1 fiel währenddessen aus, um %2</translation>
    </message>
    <message>
        <source>layer %1, terminal %2</source>
        <translation>Schicht %1, Endgerät %2</translation>
    </message>
    <message>
        <source>layer 1 at %1</source>
        <translation>Schicht 1 an %1</translation>
    </message>
    <message>
        <source>layer1</source>
        <translation>Schicht 1</translation>
    </message>
    <message>
        <source>layer2</source>
        <translation>Schicht 2</translation>
    </message>
    <message>
        <source>layer3</source>
        <translation>Schicht 3</translation>
    </message>
    <message>
        <source>leads to %1, and so does %2</source>
        <translation>führt zu %1, und ebenso %2</translation>
    </message>
    <message>
        <source>leave it out</source>
        <translation>weglassen</translation>
    </message>
    <message>
        <source>left %1</source>
        <translation>gegangen %1</translation>
    </message>
    <message>
        <source>left empty: now</source>
        <translation>leer: jetzt</translation>
    </message>
    <message>
        <source>left of %1; started at %2</source>
        <translation>übrig von %1; begonnen um %2</translation>
    </message>
    <message>
        <source>length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>length of a section or tap; or length_ft</source>
        <translation>Länge eines Abschnitts oder einer Stichleitung; oder length_ft</translation>
    </message>
    <message>
        <source>length of a section or tap; or length_m</source>
        <translation>Länge eines Abschnitts oder einer Stichleitung; oder length_m</translation>
    </message>
    <message>
        <source>libcrypto has no SHA-256</source>
        <translation>libcrypto hat kein SHA-256</translation>
    </message>
    <message>
        <source>libcrypto takes no SHA-256</source>
        <translation>libcrypto nimmt kein SHA-256 an</translation>
    </message>
    <message>
        <source>lies before the day of calibration</source>
        <translation>liegt vor dem Tag der Kalibrierung</translation>
    </message>
    <message>
        <source>lies before the start of the run</source>
        <translation>liegt vor dem Beginn des Messlaufs</translation>
    </message>
    <message>
        <source>lies in the future</source>
        <translation>liegt in der Zukunft</translation>
    </message>
    <message>
        <source>lies more than a day ahead of the clock, which shows %1</source>
        <translation>liegt mehr als einen Tag vor der Uhr, die %1 zeigt</translation>
    </message>
    <message>
        <source>limit</source>
        <translation>Grenze</translation>
    </message>
    <message>
        <source>limit %1</source>
        <translation>Grenzwert %1</translation>
    </message>
    <message>
        <source>limit set %1</source>
        <translation>Grenzwertsatz %1</translation>
    </message>
    <message>
        <source>limit set added</source>
        <translation>Grenzwertsatz eingetragen</translation>
    </message>
    <message>
        <source>limit set followed</source>
        <translation>Grenzwertsatz übernommen</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>Zeile %1</translation>
    </message>
    <message>
        <source>line %1, column %2</source>
        <translation>Zeile %1, Spalte %2</translation>
    </message>
    <message>
        <source>line equipment</source>
        <translation>Anschlusseinrichtung</translation>
    </message>
    <message>
        <source>lines without a variant are checked as the one chosen for one SPID</source>
        <translation>Zeilen ohne Variante gelten als die Variante, die für die einzelne SPID gewählt ist</translation>
    </message>
    <message>
        <source>list</source>
        <translation>Liste</translation>
    </message>
    <message>
        <source>load coil</source>
        <translation>Pupinspule</translation>
    </message>
    <message>
        <source>load coil of %1 mH</source>
        <translation>Pupinspule %1 mH</translation>
    </message>
    <message>
        <source>local codes and licensed practice prevail</source>
        <translation>örtliche Vorschriften und zugelassene Fachleute gehen vor</translation>
    </message>
    <message>
        <source>local loop</source>
        <translation>Teilnehmeranschlussleitung</translation>
    </message>
    <message>
        <source>location %1</source>
        <translation>Herkunft %1</translation>
    </message>
    <message>
        <source>login name on this computer, by which the person is known without being named</source>
        <translation>Anmeldename an diesem Rechner, an dem die Person erkannt wird, ohne genannt zu werden</translation>
    </message>
    <message>
        <source>loop</source>
        <translation>Anschlussleitung</translation>
    </message>
    <message>
        <source>loop and outside plant</source>
        <translation>Anschlussleitung und Liniennetz</translation>
    </message>
    <message>
        <source>loop at the NT, for diagnosis, on %1</source>
        <translation>Schleife am NT, zur Eingrenzung, auf %1</translation>
    </message>
    <message>
        <source>loop current</source>
        <translation>Schleifenstrom</translation>
    </message>
    <message>
        <source>loopback at the NT on %1</source>
        <translation>Schleife am NT auf %1</translation>
    </message>
    <message>
        <source>loss at %1</source>
        <translation>Dämpfung bei %1</translation>
    </message>
    <message>
        <source>loss at %1 kHz</source>
        <translation>Dämpfung bei %1 kHz</translation>
    </message>
    <message>
        <source>made after the feed was switched, without a new safety card</source>
        <translation>entstanden nach dem Umschalten der Speisung, ohne neue Sicherheitskarte</translation>
    </message>
    <message>
        <source>made before %1, %2</source>
        <translation>älter als diese Änderung: %1, %2</translation>
    </message>
    <message>
        <source>made before the safety card of that visit</source>
        <translation>entstanden vor der Sicherheitskarte jenes Einsatzes</translation>
    </message>
    <message>
        <source>made before the terminal had TEI %1</source>
        <translation>entstanden, bevor das Endgerät TEI %1 hatte</translation>
    </message>
    <message>
        <source>made when the safety card of that visit read foreign battery</source>
        <translation>entstanden, als die Sicherheitskarte jenes Einsatzes fremde Batterie zeigte</translation>
    </message>
    <message>
        <source>made when the safety card of that visit was incomplete</source>
        <translation>entstanden, als die Sicherheitskarte jenes Einsatzes unvollständig war</translation>
    </message>
    <message>
        <source>made when the safety card said that the office was connected</source>
        <translation>entstanden, als laut Sicherheitskarte die Vermittlungsstelle angeschlossen war</translation>
    </message>
    <message>
        <source>made while a hazard was open, read on %1</source>
        <translation>entstanden, während eine Gefahr offen war, gemessen am %1</translation>
    </message>
    <message>
        <source>made with</source>
        <translation>Messgerät</translation>
    </message>
    <message>
        <source>made with %1, which failed its self-test on that visit</source>
        <translation>entstanden mit %1, Selbsttest bei jenem Einsatz nicht bestanden</translation>
    </message>
    <message>
        <source>make and serial not recorded</source>
        <translation>Hersteller und Seriennummer nicht eingetragen</translation>
    </message>
    <message>
        <source>make of the NT</source>
        <translation>Fabrikat des NT</translation>
    </message>
    <message>
        <source>make-up of %1 elements</source>
        <translation>Aufbau aus %1 Elementen</translation>
    </message>
    <message>
        <source>make-up of 1 element</source>
        <translation>Aufbau aus 1 Element</translation>
    </message>
    <message>
        <source>marginal</source>
        <translation>grenzwertig</translation>
    </message>
    <message>
        <source>marginal from %1</source>
        <translation>grenzwertig ab %1</translation>
    </message>
    <message>
        <source>marginal to %1</source>
        <translation>grenzwertig bis %1</translation>
    </message>
    <message>
        <source>may be empty</source>
        <translation>kann leer bleiben</translation>
    </message>
    <message>
        <source>may be left empty</source>
        <translation>darf leer bleiben</translation>
    </message>
    <message>
        <source>may yet change</source>
        <translation>kann sich noch ändern</translation>
    </message>
    <message>
        <source>measured %1</source>
        <translation>gemessen %1</translation>
    </message>
    <message>
        <source>measured on %1</source>
        <translation>gemessen an %1</translation>
    </message>
    <message>
        <source>measured on %1, the order is for %2</source>
        <translation>gemessen an %1, der Auftrag gilt für %2</translation>
    </message>
    <message>
        <source>met</source>
        <translation>erfüllt</translation>
    </message>
    <message>
        <source>met, near the limit</source>
        <translation>erfüllt, nahe am Grenzwert</translation>
    </message>
    <message>
        <source>meter</source>
        <translation>Messgerät</translation>
    </message>
    <message>
        <source>migration %1 is missing</source>
        <translation>Migration %1 fehlt</translation>
    </message>
    <message>
        <source>min; at least %1</source>
        <translation>min; mindestens %1</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>fehlt</translation>
    </message>
    <message>
        <source>missing name separator</source>
        <translation>fehlender Doppelpunkt hinter einem Namen</translation>
    </message>
    <message>
        <source>missing value separator</source>
        <translation>fehlendes Komma zwischen Werten</translation>
    </message>
    <message>
        <source>missing: %1</source>
        <translation>es fehlt: %1</translation>
    </message>
    <message>
        <source>mistyped</source>
        <translation>vertippt</translation>
    </message>
    <message>
        <source>mistyped: the reading was never made</source>
        <translation>vertippt: Diese Ablesung gab es nie</translation>
    </message>
    <message>
        <source>mixes letters of two scripts that look alike</source>
        <translation>mischt ähnlich aussehende Buchstaben zweier Schriften</translation>
    </message>
    <message>
        <source>more than drafts was changed, and that needs an event</source>
        <translation>es wurde mehr als Entwürfe geändert, und das braucht ein Ereignis</translation>
    </message>
    <message>
        <source>move</source>
        <translation>Umzug</translation>
    </message>
    <message>
        <source>move of a line</source>
        <translation>Umzug eines Anschlusses</translation>
    </message>
    <message>
        <source>multipoint</source>
        <translation>Mehrgeräteanschluss</translation>
    </message>
    <message>
        <source>must be %1</source>
        <translation>muss sein: %1</translation>
    </message>
    <message>
        <source>must be 0</source>
        <translation>muss 0 sein</translation>
    </message>
    <message>
        <source>must be 64000 or 56000 bit/s or a multiple of one of them</source>
        <translation>muss 64000 oder 56000 bit/s sein oder ein Vielfaches davon</translation>
    </message>
    <message>
        <source>must be a JSON object</source>
        <translation>muss ein JSON-Objekt sein</translation>
    </message>
    <message>
        <source>must be a day as YYYY-MM-DD</source>
        <translation>muss ein Tag der Form JJJJ-MM-TT sein</translation>
    </message>
    <message>
        <source>must be a day as YYYY-MM-DD, and the version must not be empty</source>
        <translation>muss ein Tag der Form JJJJ-MM-TT sein, und die Version darf nicht leer sein</translation>
    </message>
    <message>
        <source>must be a day as YYYY-MM-DD, or not_required</source>
        <translation>muss ein Tag der Form JJJJ-MM-TT sein oder not_required</translation>
    </message>
    <message>
        <source>must be a text</source>
        <translation>muss ein Text sein</translation>
    </message>
    <message>
        <source>must be a time in ISO 8601 with its offset, such as 2026-03-04T09:15:00-06:00</source>
        <translation>muss eine Zeit nach ISO 8601 mit Zeitverschiebung sein, etwa 2026-03-04T09:15:00-06:00</translation>
    </message>
    <message>
        <source>must be a whole number</source>
        <translation>muss eine ganze Zahl sein</translation>
    </message>
    <message>
        <source>must be a whole number from 0 to %1, or null</source>
        <translation>muss eine ganze Zahl von 0 bis %1 sein oder null</translation>
    </message>
    <message>
        <source>must be an object</source>
        <translation>muss ein Objekt sein</translation>
    </message>
    <message>
        <source>must be from %1 to %2</source>
        <translation>muss zwischen %1 und %2 liegen</translation>
    </message>
    <message>
        <source>must be label=number joined by ; with each label once</source>
        <translation>muss Name=Nummer sein, getrennt durch ; und jeder Name einmal</translation>
    </message>
    <message>
        <source>must be the order's: a wrong one is another customer's line</source>
        <translation>muss die des Auftrags sein: eine falsche gehört zum Anschluss eines anderen Kunden</translation>
    </message>
    <message>
        <source>must end in .csv, .svg or .pdf, not "%1"</source>
        <translation>muss auf .csv, .svg oder .pdf enden, nicht „%1“</translation>
    </message>
    <message>
        <source>must have 64 hexadecimal digits</source>
        <translation>muss 64 hexadezimale Ziffern haben</translation>
    </message>
    <message>
        <source>must hold 1 to %1 elements</source>
        <translation>muss 1 bis %1 Abschnitte enthalten</translation>
    </message>
    <message>
        <source>must lead from the name of a column to one of ours</source>
        <translation>muss vom Namen einer Spalte zu einer der unseren führen</translation>
    </message>
    <message>
        <source>must name at least one</source>
        <translation>muss mindestens eines nennen</translation>
    </message>
    <message>
        <source>must name at least one element</source>
        <translation>muss mindestens einen Abschnitt nennen</translation>
    </message>
    <message>
        <source>must not be empty</source>
        <translation>darf nicht leer sein</translation>
    </message>
    <message>
        <source>must say in at least two words what was done</source>
        <translation>muss in mindestens zwei Wörtern sagen, was getan wurde</translation>
    </message>
    <message>
        <source>name of the customer</source>
        <translation>Name des Kunden</translation>
    </message>
    <message>
        <source>name of the office, as papers print it</source>
        <translation>Name der Vermittlungsstelle, wie ihn Papiere drucken</translation>
    </message>
    <message>
        <source>name of the pair in its cable</source>
        <translation>Name der Doppelader in ihrem Kabel</translation>
    </message>
    <message>
        <source>name, as papers print it</source>
        <translation>Name, wie ihn Papiere drucken</translation>
    </message>
    <message>
        <source>named by %1: %2</source>
        <translation>genannt von %1: %2</translation>
    </message>
    <message>
        <source>names a fingerprint that is not that of the key</source>
        <translation>nennt einen Fingerabdruck, der nicht der des Schlüssels ist</translation>
    </message>
    <message>
        <source>names no fact of order %1</source>
        <translation>nennt keinen Eintrag des Auftrags %1</translation>
    </message>
    <message>
        <source>names no safety card of these records; the id of the card that read the hazard is expected</source>
        <translation>nennt keine Sicherheitskarte dieses Datenbestands; erwartet wird die Kennung der Karte, die die Gefahr zeigte</translation>
    </message>
    <message>
        <source>national %1</source>
        <translation>national %1</translation>
    </message>
    <message>
        <source>needs no calibration</source>
        <translation>braucht keine Kalibrierung</translation>
    </message>
    <message>
        <source>new</source>
        <translation>Neuanschluss</translation>
    </message>
    <message>
        <source>new evidence for: %1</source>
        <translation>neue Belege für: %1</translation>
    </message>
    <message>
        <source>new line</source>
        <translation>neuer Anschluss</translation>
    </message>
    <message>
        <source>next due on %1</source>
        <translation>wieder fällig am %1</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>no access</source>
        <translation>kein Zutritt</translation>
    </message>
    <message>
        <source>no calibration recorded</source>
        <translation>keine Kalibrierung erfasst</translation>
    </message>
    <message>
        <source>no dial tone</source>
        <translation>kein Wählton</translation>
    </message>
    <message>
        <source>no entry</source>
        <translation>kein Eintrag</translation>
    </message>
    <message>
        <source>no error</source>
        <translation>kein Fehler</translation>
    </message>
    <message>
        <source>no font here has %1; the Debian package %2 has %3</source>
        <translation>keine Schrift hier hat %1; das Debian-Paket %2 hat %3</translation>
    </message>
    <message>
        <source>no voltage read</source>
        <translation>keine Spannung gemessen</translation>
    </message>
    <message>
        <source>no work</source>
        <translation>keine Arbeit</translation>
    </message>
    <message>
        <source>nobody is assigned</source>
        <translation>niemand ist zugeteilt</translation>
    </message>
    <message>
        <source>noise</source>
        <translation>Geräusch</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>none (true or false)</source>
        <translation>keine (true oder false)</translation>
    </message>
    <message>
        <source>none in error or in use elsewhere</source>
        <translation>keine fehlerhaft oder anderswo vergeben</translation>
    </message>
    <message>
        <source>none is said yet</source>
        <translation>noch keines angegeben</translation>
    </message>
    <message>
        <source>none of the bridged taps on record is there</source>
        <translation>keine der verzeichneten Stichleitungen ist vorhanden</translation>
    </message>
    <message>
        <source>none of the load coils on record is there</source>
        <translation>keine der verzeichneten Pupinspulen ist vorhanden</translation>
    </message>
    <message>
        <source>none ticked: all that is ordered</source>
        <translation>nichts angekreuzt: alles, was bestellt ist</translation>
    </message>
    <message>
        <source>none yet: import offices first</source>
        <translation>noch keine: zuerst Vermittlungsstellen einlesen</translation>
    </message>
    <message>
        <source>none, leave it empty</source>
        <translation>keine, leer lassen</translation>
    </message>
    <message>
        <source>normal</source>
        <translation>normal</translation>
    </message>
    <message>
        <source>normal event</source>
        <translation>normales Ereignis</translation>
    </message>
    <message>
        <source>not accepted</source>
        <translation>nicht abgenommen</translation>
    </message>
    <message>
        <source>not arrived yet</source>
        <translation>noch nicht angekommen</translation>
    </message>
    <message>
        <source>not called</source>
        <translation>nicht angerufen</translation>
    </message>
    <message>
        <source>not heard</source>
        <translation>nicht zu hören</translation>
    </message>
    <message>
        <source>not in service yet</source>
        <translation>noch nicht in Betrieb</translation>
    </message>
    <message>
        <source>not in step</source>
        <translation>nicht im Gleichlauf</translation>
    </message>
    <message>
        <source>not in the Q.850 list</source>
        <translation>nicht in der Liste von Q.850</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>not met</source>
        <translation>nicht erfüllt</translation>
    </message>
    <message>
        <source>not named</source>
        <translation>nicht genannt</translation>
    </message>
    <message>
        <source>not needed</source>
        <translation>entfällt</translation>
    </message>
    <message>
        <source>not needed for this order.</source>
        <translation>für diesen Auftrag nicht nötig.</translation>
    </message>
    <message>
        <source>not ordered</source>
        <translation>nicht bestellt</translation>
    </message>
    <message>
        <source>not recorded, and needed only where it is.</source>
        <translation>nicht eingetragen, und nur nötig, wo es eingetragen ist.</translation>
    </message>
    <message>
        <source>not required</source>
        <translation>nicht nötig</translation>
    </message>
    <message>
        <source>not required, as labelled</source>
        <translation>nicht nötig, laut Etikett</translation>
    </message>
    <message>
        <source>not run</source>
        <translation>nicht gelaufen</translation>
    </message>
    <message>
        <source>not said whether wet or dry</source>
        <translation>nicht gesagt, ob nass oder trocken</translation>
    </message>
    <message>
        <source>not shown</source>
        <translation>nicht gezeigt</translation>
    </message>
    <message>
        <source>not signed</source>
        <translation>nicht unterschrieben</translation>
    </message>
    <message>
        <source>not suitable</source>
        <translation>ungeeignet</translation>
    </message>
    <message>
        <source>not watched</source>
        <translation>nicht beobachtet</translation>
    </message>
    <message>
        <source>not within its calibration</source>
        <translation>nicht innerhalb der Kalibrierung</translation>
    </message>
    <message>
        <source>not yet run</source>
        <translation>noch nicht gelaufen</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>nothing can be written into it</source>
        <translation>es lässt sich nichts hineinschreiben</translation>
    </message>
    <message>
        <source>nothing compared yet</source>
        <translation>noch nichts verglichen</translation>
    </message>
    <message>
        <source>nothing found</source>
        <translation>nichts gefunden</translation>
    </message>
    <message>
        <source>nothing says that the chain should end with this event</source>
        <translation>nichts sagt, dass die Kette mit diesem Ereignis enden soll</translation>
    </message>
    <message>
        <source>nothing to take apart</source>
        <translation>nichts zu zerlegen</translation>
    </message>
    <message>
        <source>nothing was found</source>
        <translation>nichts wurde gefunden</translation>
    </message>
    <message>
        <source>now: %1</source>
        <translation>jetzt: %1</translation>
    </message>
    <message>
        <source>nt</source>
        <translation>NT</translation>
    </message>
    <message>
        <source>nt loop</source>
        <translation>Schleife im NT</translation>
    </message>
    <message>
        <source>number announced for %1</source>
        <translation>Ansage der Rufnummer %1</translation>
    </message>
    <message>
        <source>number of an order that belongs to it</source>
        <translation>Nummer eines zugehörigen Auftrags</translation>
    </message>
    <message>
        <source>number of terminal 1, or of the analog line</source>
        <translation>Rufnummer von Endgerät 1 oder des Analoganschlusses</translation>
    </message>
    <message>
        <source>number of the circuit that the order is for</source>
        <translation>Nummer des Anschlusses, für den der Auftrag ist</translation>
    </message>
    <message>
        <source>number of the order, once in the records</source>
        <translation>Nummer des Auftrags, einmal im Datenbestand</translation>
    </message>
    <message>
        <source>number of the second, or its time</source>
        <translation>Nummer der Sekunde oder ihre Zeit</translation>
    </message>
    <message>
        <source>numbers of further terminals</source>
        <translation>Rufnummern weiterer Endgeräte</translation>
    </message>
    <message>
        <source>numbers or identifiers were changed</source>
        <translation>Rufnummern oder Kennungen wurden geändert</translation>
    </message>
    <message>
        <source>object is missing after a comma</source>
        <translation>nach einem Komma fehlt ein Objekt</translation>
    </message>
    <message>
        <source>of "%1" must be "%2"</source>
        <translation>von „%1“ muss „%2“ sein</translation>
    </message>
    <message>
        <source>of "%1" must be empty: it is a pure number</source>
        <translation>von „%1“ muss leer sein: es ist eine reine Zahl</translation>
    </message>
    <message>
        <source>of "%1" must be from %2 to %3</source>
        <translation>von „%1“ muss zwischen %2 und %3 liegen</translation>
    </message>
    <message>
        <source>of a point-to-point line</source>
        <translation>eines Anlagenanschlusses</translation>
    </message>
    <message>
        <source>of a point-to-point line, e.g. 00-49</source>
        <translation>eines Anlagenanschlusses, z. B. 00-49</translation>
    </message>
    <message>
        <source>of a point-to-point line: its extensions, e.g. 00-49</source>
        <translation>eines Anlagenanschlusses: seine Durchwahlen, z. B. 00-49</translation>
    </message>
    <message>
        <source>of a point-to-point line: its number without extension</source>
        <translation>eines Anlagenanschlusses: seine Rufnummer ohne Durchwahl</translation>
    </message>
    <message>
        <source>of a repair, as the customer says it</source>
        <translation>einer Entstörung, in den Worten des Kunden</translation>
    </message>
    <message>
        <source>of a repair: what a test from the desk showed</source>
        <translation>einer Entstörung: was eine Prüfung vom Büro aus zeigte</translation>
    </message>
    <message>
        <source>of a repair: what the customer says</source>
        <translation>einer Entstörung: was der Kunde sagt</translation>
    </message>
    <message>
        <source>of a repair; may be left empty</source>
        <translation>einer Entstörung; kann leer bleiben</translation>
    </message>
    <message>
        <source>of an order on hold: what is missing</source>
        <translation>eines ruhenden Auftrags: was fehlt</translation>
    </message>
    <message>
        <source>of an order on hold: who has to act first</source>
        <translation>eines ruhenden Auftrags: wer zuerst handeln muss</translation>
    </message>
    <message>
        <source>of its switch</source>
        <translation>ihrer Vermittlung</translation>
    </message>
    <message>
        <source>off-hook, against the office's milliwatt at 1004 Hz</source>
        <translation>abgehoben, gegen das Milliwatt der Vermittlungsstelle bei 1004 Hz</translation>
    </message>
    <message>
        <source>office</source>
        <translation>Büro</translation>
    </message>
    <message>
        <source>office %1</source>
        <translation>Vermittlungsstelle %1</translation>
    </message>
    <message>
        <source>office added</source>
        <translation>Vermittlungsstelle eingetragen</translation>
    </message>
    <message>
        <source>office changed</source>
        <translation>Vermittlungsstelle geändert</translation>
    </message>
    <message>
        <source>office, set of records</source>
        <translation>Büro, Datenbestand</translation>
    </message>
    <message>
        <source>ohm</source>
        <translation>Ohm</translation>
    </message>
    <message>
        <source>ok</source>
        <translation>in Ordnung</translation>
    </message>
    <message>
        <source>on hold</source>
        <translation>zurückgestellt</translation>
    </message>
    <message>
        <source>on its label</source>
        <translation>auf dem Etikett</translation>
    </message>
    <message>
        <source>on site</source>
        <translation>vor Ort</translation>
    </message>
    <message>
        <source>on site since %1</source>
        <translation>vor Ort seit %1</translation>
    </message>
    <message>
        <source>on-hook voltage</source>
        <translation>Ruhespannung</translation>
    </message>
    <message>
        <source>one certificate number was given out twice</source>
        <translation>eine Zertifikatsnummer wurde zweimal vergeben</translation>
    </message>
    <message>
        <source>one digit for each terminal, 1 to 8; often the number's last</source>
        <translation>eine Ziffer für jedes Endgerät, 1 bis 8; oft die letzte der Rufnummer</translation>
    </message>
    <message>
        <source>one entry has two contents</source>
        <translation>ein Eintrag hat zwei Inhalte</translation>
    </message>
    <message>
        <source>one for each directory number, all digits without separators</source>
        <translation>eine für jede Rufnummer, alle Ziffern ohne Trennzeichen</translation>
    </message>
    <message>
        <source>one for each terminal, all digits without separators</source>
        <translation>eine für jedes Endgerät, alle Ziffern ohne Trennzeichen</translation>
    </message>
    <message>
        <source>one row each from the office to the customer</source>
        <translation>je eine Zeile, von der Vermittlungsstelle zum Kunden</translation>
    </message>
    <message>
        <source>one session, whoever sets it up</source>
        <translation>eine Sitzung, gleich wer sie aufbaut</translation>
    </message>
    <message>
        <source>only where it calls back</source>
        <translation>nur bei Rückruf</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>open or bring back what a van takes along</source>
        <translation>öffnen oder zurückbringen, was ein Wagen mitnimmt</translation>
    </message>
    <message>
        <source>open: %1</source>
        <translation>offen: %1</translation>
    </message>
    <message>
        <source>or %1 is required and missing</source>
        <translation>oder %1 ist erforderlich und fehlt</translation>
    </message>
    <message>
        <source>or not_required</source>
        <translation>oder not_required</translation>
    </message>
    <message>
        <source>order</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>order %1</source>
        <translation>Auftrag %1</translation>
    </message>
    <message>
        <source>order %1 has no channel %2</source>
        <translation>Auftrag %1 hat keinen Kanal %2</translation>
    </message>
    <message>
        <source>order %1 has no terminal %2</source>
        <translation>Auftrag %1 hat kein Endgerät %2</translation>
    </message>
    <message>
        <source>order %1 is %2: a certificate is issued for an accepted order</source>
        <translation>Auftrag %1 ist %2: ein Zertifikat wird für einen abgenommenen Auftrag ausgestellt</translation>
    </message>
    <message>
        <source>order %1 is accepted: it gets a certificate</source>
        <translation>Auftrag %1 ist abgenommen: er bekommt ein Zertifikat</translation>
    </message>
    <message>
        <source>order %1 is incomplete: %2</source>
        <translation>Auftrag %1 ist unvollständig: %2</translation>
    </message>
    <message>
        <source>order %1 is not accepted%2</source>
        <translation>Auftrag %1 ist nicht abgenommen%2</translation>
    </message>
    <message>
        <source>order %1 is not on the board</source>
        <translation>Auftrag %1 steht nicht in der Übersicht</translation>
    </message>
    <message>
        <source>order %1 names no %2: a paper for a customer names customer, premises and installer</source>
        <translation>in Auftrag %1 fehlt: %2. Ein Papier für Kunden nennt Kunde, Standort und Monteur</translation>
    </message>
    <message>
        <source>order %1 was not completed in the order of its rank</source>
        <translation>Auftrag %1 wurde nicht in der Folge seines Rangs abgeschlossen</translation>
    </message>
    <message>
        <source>order %1: %2 otherwise than computed anew (%3)</source>
        <translation>Auftrag %1: %2 anders als neu berechnet (%3)</translation>
    </message>
    <message>
        <source>order %1: its hazard is not noted for others on its pair</source>
        <translation>Auftrag %1: seine Gefahr ist für andere an seiner Doppelader nicht vermerkt</translation>
    </message>
    <message>
        <source>order cancelled</source>
        <translation>Auftrag storniert</translation>
    </message>
    <message>
        <source>order changed</source>
        <translation>Auftrag geändert</translation>
    </message>
    <message>
        <source>order completed</source>
        <translation>Auftrag abgeschlossen</translation>
    </message>
    <message>
        <source>order no longer held</source>
        <translation>Auftrag nicht mehr zurückgehalten</translation>
    </message>
    <message>
        <source>order taken</source>
        <translation>Auftrag angenommen</translation>
    </message>
    <message>
        <source>orders</source>
        <translation>Aufträge</translation>
    </message>
    <message>
        <source>orders: %1, circuits: %2</source>
        <translation>Aufträge: %1, Anschlüsse: %2</translation>
    </message>
    <message>
        <source>other</source>
        <translation>anderes</translation>
    </message>
    <message>
        <source>other pair</source>
        <translation>andere Doppelader</translation>
    </message>
    <message>
        <source>out</source>
        <translation>gehend</translation>
    </message>
    <message>
        <source>out of sync</source>
        <translation>nicht synchron</translation>
    </message>
    <message>
        <source>outside plant repair, with the pair and the readings below</source>
        <translation>die Kabelentstörung, mit der Doppelader und den Ablesungen unten</translation>
    </message>
    <message>
        <source>outside plant repair, with the pair and the readings below, %1</source>
        <translation>die Kabelentstörung, mit der Doppelader und den Ablesungen unten, %1</translation>
    </message>
    <message>
        <source>packet</source>
        <translation>Paketdaten</translation>
    </message>
    <message>
        <source>packet session on %1</source>
        <translation>Paketsitzung auf %1</translation>
    </message>
    <message>
        <source>packet, where packet data on the D channel is ordered</source>
        <translation>packet, wo Paketdaten auf dem D-Kanal bestellt sind</translation>
    </message>
    <message>
        <source>page %1 could not be begun</source>
        <translation>Seite %1 ließ sich nicht beginnen</translation>
    </message>
    <message>
        <source>pair</source>
        <translation>Doppelader</translation>
    </message>
    <message>
        <source>pair %1</source>
        <translation>Doppelader %1</translation>
    </message>
    <message>
        <source>pair in the main cable, before the cross-connect</source>
        <translation>Doppelader im Hauptkabel, vor dem Verteiler</translation>
    </message>
    <message>
        <source>pair twice</source>
        <translation>Doppelader doppelt</translation>
    </message>
    <message>
        <source>passed</source>
        <translation>bestanden</translation>
    </message>
    <message>
        <source>pattern</source>
        <translation>Muster</translation>
    </message>
    <message>
        <source>permit</source>
        <translation>Genehmigung</translation>
    </message>
    <message>
        <source>person added</source>
        <translation>Person eingetragen</translation>
    </message>
    <message>
        <source>person changed</source>
        <translation>Person geändert</translation>
    </message>
    <message>
        <source>pin removed</source>
        <translation>PIN entfernt</translation>
    </message>
    <message>
        <source>pin set</source>
        <translation>PIN gesetzt</translation>
    </message>
    <message>
        <source>plant</source>
        <translation>Leitungsnetz</translation>
    </message>
    <message>
        <source>point to point</source>
        <translation>Anlagenanschluss</translation>
    </message>
    <message>
        <source>point-to-multipoint</source>
        <translation>Punkt-zu-Mehrpunkt</translation>
    </message>
    <message>
        <source>point-to-point</source>
        <translation>Punkt-zu-Punkt</translation>
    </message>
    <message>
        <source>polarity</source>
        <translation>Polarität</translation>
    </message>
    <message>
        <source>poor</source>
        <translation>schlecht</translation>
    </message>
    <message>
        <source>power</source>
        <translation>Starkstrom</translation>
    </message>
    <message>
        <source>power influence</source>
        <translation>Starkstrombeeinflussung</translation>
    </message>
    <message>
        <source>power influence less circuit noise: the installer's subtraction, not a bridge measurement</source>
        <translation>Starkstrombeeinflussung minus Leitungsgeräusch: die Rechnung des Monteurs, keine Brückenmessung</translation>
    </message>
    <message>
        <source>power utility</source>
        <translation>Stromversorger</translation>
    </message>
    <message>
        <source>predicted</source>
        <translation>berechnet</translation>
    </message>
    <message>
        <source>predicted %1</source>
        <translation>berechnet %1</translation>
    </message>
    <message>
        <source>prefix</source>
        <translation>Präfix</translation>
    </message>
    <message>
        <source>premises</source>
        <translation>beim Kunden</translation>
    </message>
    <message>
        <source>premises and no installer</source>
        <translation>Standort, Monteur</translation>
    </message>
    <message>
        <source>premises wiring</source>
        <translation>Hausverkabelung</translation>
    </message>
    <message>
        <source>printed behind it; saved beside it</source>
        <translation>dahinter gedruckt; daneben gespeichert</translation>
    </message>
    <message>
        <source>printed on the certificate</source>
        <translation>steht auf dem Zertifikat</translation>
    </message>
    <message>
        <source>private local</source>
        <translation>privates Netz, nah</translation>
    </message>
    <message>
        <source>private remote</source>
        <translation>privates Netz, fern</translation>
    </message>
    <message>
        <source>protocol error</source>
        <translation>Protokollfehler</translation>
    </message>
    <message>
        <source>public domain</source>
        <translation>gemeinfrei</translation>
    </message>
    <message>
        <source>public local</source>
        <translation>öffentliches Netz, nah</translation>
    </message>
    <message>
        <source>public remote</source>
        <translation>öffentliches Netz, fern</translation>
    </message>
    <message>
        <source>published equipment practice</source>
        <translation>veröffentlichte Gerätepraxis</translation>
    </message>
    <message>
        <source>published equipment practice; coin lines from memory</source>
        <translation>veröffentlichte Gerätepraxis; Münztelefone aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>read for order %1</source>
        <translation>gelesen für den Auftrag %1</translation>
    </message>
    <message>
        <source>readback</source>
        <translation>Ansage</translation>
    </message>
    <message>
        <source>record only</source>
        <translation>nur Aufzeichnung</translation>
    </message>
    <message>
        <source>record what was done</source>
        <translation>erfassen, was getan wurde</translation>
    </message>
    <message>
        <source>recorded at %1</source>
        <translation>erfasst: %1</translation>
    </message>
    <message>
        <source>recorded when the order was no longer open</source>
        <translation>erfasst, als der Auftrag nicht mehr offen war</translation>
    </message>
    <message>
        <source>reference %1</source>
        <translation>Referenz %1</translation>
    </message>
    <message>
        <source>referred</source>
        <translation>Weitergabe</translation>
    </message>
    <message>
        <source>refused</source>
        <translation>abgewiesen</translation>
    </message>
    <message>
        <source>registered, within its calibration on the day, no failed self-test</source>
        <translation>im Register, am Tag gültig kalibriert, kein nicht bestandener Selbsttest</translation>
    </message>
    <message>
        <source>released</source>
        <translation>freigegeben</translation>
    </message>
    <message>
        <source>renew keys</source>
        <translation>Schlüssel erneuern</translation>
    </message>
    <message>
        <source>repair</source>
        <translation>Entstörung</translation>
    </message>
    <message>
        <source>repair of a line</source>
        <translation>Entstörung eines Anschlusses</translation>
    </message>
    <message>
        <source>resistance and loss go together with length</source>
        <translation>Widerstand und Dämpfung ändern sich gemeinsam mit der Länge</translation>
    </message>
    <message>
        <source>resistance of a load coil, if it is not the usual one</source>
        <translation>Widerstand einer Pupinspule, wenn es nicht der übliche ist</translation>
    </message>
    <message>
        <source>resource unavailable</source>
        <translation>Betriebsmittel nicht verfügbar</translation>
    </message>
    <message>
        <source>restore a backup</source>
        <translation>eine Sicherung wiederherstellen</translation>
    </message>
    <message>
        <source>restored</source>
        <translation>wiederhergestellt</translation>
    </message>
    <message>
        <source>reversed</source>
        <translation>vertauscht</translation>
    </message>
    <message>
        <source>ring and ground</source>
        <translation>b‑Ader und Erde</translation>
    </message>
    <message>
        <source>ring ground</source>
        <translation>b‑Ader gegen Erde</translation>
    </message>
    <message>
        <source>ring to ground</source>
        <translation>b gegen Erde</translation>
    </message>
    <message>
        <source>ring to ground %1</source>
        <translation>b gegen Erde %1</translation>
    </message>
    <message>
        <source>ringing</source>
        <translation>Klingeln</translation>
    </message>
    <message>
        <source>ringing of the office</source>
        <translation>Rufstrom der Vermittlungsstelle</translation>
    </message>
    <message>
        <source>ringing voltage</source>
        <translation>Rufspannung</translation>
    </message>
    <message>
        <source>rings</source>
        <translation>klingelt</translation>
    </message>
    <message>
        <source>row</source>
        <translation>Zeile</translation>
    </message>
    <message>
        <source>row %1</source>
        <translation>Zeile %1</translation>
    </message>
    <message>
        <source>row %1, column %2</source>
        <translation>Zeile %1, Spalte %2</translation>
    </message>
    <message>
        <source>rows</source>
        <translation>Zeilen</translation>
    </message>
    <message>
        <source>rows of %1 refer to something that is not there</source>
        <translation>Zeilen von %1 verweisen auf etwas, das es nicht gibt</translation>
    </message>
    <message>
        <source>rows of %1 were written without an event</source>
        <translation>Zeilen von %1 wurden ohne Ereignis geschrieben</translation>
    </message>
    <message>
        <source>rules of the protocol variant</source>
        <translation>Regeln der Protokollvariante</translation>
    </message>
    <message>
        <source>run</source>
        <translation>Messlauf</translation>
    </message>
    <message>
        <source>s; at least %1</source>
        <translation>s; mindestens %1</translation>
    </message>
    <message>
        <source>s; at least 1</source>
        <translation>s; mindestens 1</translation>
    </message>
    <message>
        <source>s; at most %1</source>
        <translation>s; höchstens %1</translation>
    </message>
    <message>
        <source>s; at most %1 % of the seconds</source>
        <translation>s; höchstens %1 % der Sekunden</translation>
    </message>
    <message>
        <source>safety</source>
        <translation>Sicherheitskarte</translation>
    </message>
    <message>
        <source>same wires: only the name of the pair was wrong</source>
        <translation>gleiche Adern: nur der Name der Doppelader war falsch</translation>
    </message>
    <message>
        <source>say by --format csv, svg or pdf what goes there</source>
        <translation>mit --format csv, svg oder pdf angeben, was dorthin kommt</translation>
    </message>
    <message>
        <source>say to whom the job is handed on</source>
        <translation>angeben, an wen der Auftrag weitergegeben wird</translation>
    </message>
    <message>
        <source>second %1 goes back in time</source>
        <translation>Sekunde %1 springt in der Zeit zurück</translation>
    </message>
    <message>
        <source>second %1 is there twice</source>
        <translation>Sekunde %1 ist doppelt</translation>
    </message>
    <message>
        <source>section</source>
        <translation>Abschnitt</translation>
    </message>
    <message>
        <source>section of %1, %2</source>
        <translation>Abschnitt %1, %2</translation>
    </message>
    <message>
        <source>self call</source>
        <translation>Anruf bei sich selbst</translation>
    </message>
    <message>
        <source>self test</source>
        <translation>Selbsttest</translation>
    </message>
    <message>
        <source>self-call on %1</source>
        <translation>Ruf zu sich selbst auf %1</translation>
    </message>
    <message>
        <source>sent %1 times</source>
        <translation>%1-mal gesendet</translation>
    </message>
    <message>
        <source>serial %1</source>
        <translation>Seriennummer %1</translation>
    </message>
    <message>
        <source>serial number</source>
        <translation>Seriennummer</translation>
    </message>
    <message>
        <source>serial number of the NT</source>
        <translation>Seriennummer des NT</translation>
    </message>
    <message>
        <source>service or option not available</source>
        <translation>Dienst oder Option nicht verfügbar</translation>
    </message>
    <message>
        <source>service or option not implemented</source>
        <translation>Dienst oder Option nicht implementiert</translation>
    </message>
    <message>
        <source>service profile identifier</source>
        <translation>Kennung des Dienstprofils</translation>
    </message>
    <message>
        <source>services of channel B1, joined by +; of an analog line: voice</source>
        <translation>Dienste des Kanals B1, verbunden durch +; eines Analoganschlusses: voice</translation>
    </message>
    <message>
        <source>services of channel B2; empty: not ordered</source>
        <translation>Dienste des Kanals B2; leer: nicht bestellt</translation>
    </message>
    <message>
        <source>services that this number answers; empty: all that a B channel has</source>
        <translation>Dienste, die diese Rufnummer annimmt; leer: alle eines B-Kanals</translation>
    </message>
    <message>
        <source>serving office</source>
        <translation>Vermittlungsstelle</translation>
    </message>
    <message>
        <source>set aside by who settled it: %1</source>
        <translation>zurückgestellt von der Person, die es geklärt hat: %1</translation>
    </message>
    <message>
        <source>set aside until somebody settles it: %1</source>
        <translation>zurückgestellt, bis jemand es klärt: %1</translation>
    </message>
    <message>
        <source>set up</source>
        <translation>Einrichten</translation>
    </message>
    <message>
        <source>setting</source>
        <translation>Einstellung</translation>
    </message>
    <message>
        <source>settled</source>
        <translation>geklärt</translation>
    </message>
    <message>
        <source>severely errored</source>
        <translation>stark fehlerhaft</translation>
    </message>
    <message>
        <source>severely errored from %1</source>
        <translation>stark fehlerhaft ab %1</translation>
    </message>
    <message>
        <source>sharing id</source>
        <translation>Sharing-Kennung</translation>
    </message>
    <message>
        <source>signed after the first issue, on %1</source>
        <translation>nach der ersten Ausgabe unterschrieben, am %1</translation>
    </message>
    <message>
        <source>signed by %1</source>
        <translation>unterschrieben von %1</translation>
    </message>
    <message>
        <source>since %1</source>
        <translation>seit %1</translation>
    </message>
    <message>
        <source>slips not told</source>
        <translation>Schlupfe nicht angegeben</translation>
    </message>
    <message>
        <source>slope</source>
        <translation>Dämpfungsverzerrung</translation>
    </message>
    <message>
        <source>something else</source>
        <translation>etwas anderes</translation>
    </message>
    <message>
        <source>something else was mended</source>
        <translation>etwas anderes wurde behoben</translation>
    </message>
    <message>
        <source>span feed</source>
        <translation>Fernspeisung</translation>
    </message>
    <message>
        <source>spid_%1: %2</source>
        <translation>SPID %1: %2</translation>
    </message>
    <message>
        <source>standard input</source>
        <translation>Standardeingabe</translation>
    </message>
    <message>
        <source>standard output</source>
        <translation>Standardausgabe</translation>
    </message>
    <message>
        <source>stands beside %1; only one of the two may</source>
        <translation>steht neben %1; nur eines von beiden darf dastehen</translation>
    </message>
    <message>
        <source>stands beside temperature_c; only one of the two may</source>
        <translation>steht neben temperature_c; nur eines von beiden darf dastehen</translation>
    </message>
    <message>
        <source>stands in more than one row</source>
        <translation>steht in mehr als einer Zeile</translation>
    </message>
    <message>
        <source>stands there twice</source>
        <translation>kommt zweimal vor</translation>
    </message>
    <message>
        <source>station %1</source>
        <translation>Station %1</translation>
    </message>
    <message>
        <source>station %1, key %2</source>
        <translation>Station %1, Schlüssel %2</translation>
    </message>
    <message>
        <source>stop above %1</source>
        <translation>Halt über %1</translation>
    </message>
    <message>
        <source>struck out</source>
        <translation>gestrichen</translation>
    </message>
    <message>
        <source>struck out by %1: %2</source>
        <translation>gestrichen von %1: %2</translation>
    </message>
    <message>
        <source>suffix</source>
        <translation>Suffix</translation>
    </message>
    <message>
        <source>suitable</source>
        <translation>geeignet</translation>
    </message>
    <message>
        <source>supervisor</source>
        <translation>Aufsicht</translation>
    </message>
    <message>
        <source>supplied with the line</source>
        <translation>mit dem Anschluss geliefert</translation>
    </message>
    <message>
        <source>switch built</source>
        <translation>in der Vermittlung eingerichtet</translation>
    </message>
    <message>
        <source>switch desk</source>
        <translation>Vermittlungsdienststelle</translation>
    </message>
    <message>
        <source>take in, change, complete or cancel orders</source>
        <translation>Aufträge annehmen, ändern, abschließen oder stornieren</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>zurückgenommen</translation>
    </message>
    <message>
        <source>takes the evidence that it makes old out of the decision</source>
        <translation>nimmt die Nachweise, die dadurch veralten, aus der Entscheidung</translation>
    </message>
    <message>
        <source>tap of %1, %2</source>
        <translation>Stichleitung von %1, %2</translation>
    </message>
    <message>
        <source>taps %1</source>
        <translation>Stichleitungen %1</translation>
    </message>
    <message>
        <source>telephone, for papers</source>
        <translation>Telefon, für Papiere</translation>
    </message>
    <message>
        <source>temperature of the cable, in one row; or temperature_c</source>
        <translation>Temperatur des Kabels, in einer Zeile; oder temperature_c</translation>
    </message>
    <message>
        <source>temperature of the cable, in one row; or temperature_f</source>
        <translation>Temperatur des Kabels, in einer Zeile; oder temperature_f</translation>
    </message>
    <message>
        <source>terminal</source>
        <translation>Endgerät</translation>
    </message>
    <message>
        <source>terminal %1</source>
        <translation>Endgerät %1</translation>
    </message>
    <message>
        <source>terminal endpoint identifier</source>
        <translation>Endpunktkennung des Endgeräts</translation>
    </message>
    <message>
        <source>terminal equipment</source>
        <translation>Endgeräte</translation>
    </message>
    <message>
        <source>terminal id</source>
        <translation>Endgerätekennung</translation>
    </message>
    <message>
        <source>termination: published equipment practice</source>
        <translation>Abschluss: veröffentlichte Gerätepraxis</translation>
    </message>
    <message>
        <source>test line</source>
        <translation>Prüfanschluss</translation>
    </message>
    <message>
        <source>test line on %1</source>
        <translation>Ruf zur Prüfnummer auf %1</translation>
    </message>
    <message>
        <source>test pattern, PRBS</source>
        <translation>Prüfmuster, PRBS</translation>
    </message>
    <message>
        <source>tested %1</source>
        <translation>geprüft %1</translation>
    </message>
    <message>
        <source>the %1</source>
        <translation>die %1</translation>
    </message>
    <message>
        <source>the %1 is missing</source>
        <translation>es fehlt: %1</translation>
    </message>
    <message>
        <source>the %1 was changed</source>
        <translation>geändert wurde: %1</translation>
    </message>
    <message>
        <source>the %1 was changed from %2 to %3</source>
        <translation>%1 wurde von %2 in %3 geändert</translation>
    </message>
    <message>
        <source>the %1 was put in</source>
        <translation>hinzugefügt wurde: %1</translation>
    </message>
    <message>
        <source>the %1 was set to %2</source>
        <translation>%1 wurde auf %2 gesetzt</translation>
    </message>
    <message>
        <source>the %1,</source>
        <translation>der %1,</translation>
    </message>
    <message>
        <source>the %1, on record is not there</source>
        <translation>die verzeichnete %1, ist nicht vorhanden</translation>
    </message>
    <message>
        <source>the NT was changed</source>
        <translation>der NT wurde gewechselt</translation>
    </message>
    <message>
        <source>the SPID, digits and separators</source>
        <translation>die SPID, Ziffern und Trennzeichen</translation>
    </message>
    <message>
        <source>the SQLite driver of Qt is not installed</source>
        <translation>der SQLite-Treiber von Qt ist nicht installiert</translation>
    </message>
    <message>
        <source>the announced number is the order's</source>
        <translation>die angesagte Rufnummer ist die des Auftrags</translation>
    </message>
    <message>
        <source>the backup cannot be written there: %1</source>
        <translation>die Sicherung lässt sich dort nicht schreiben: %1</translation>
    </message>
    <message>
        <source>the backup is made, and the signed head of its log is not: %1</source>
        <translation>die Sicherung ist gemacht, der signierte Kopf ihres Protokolls nicht: %1</translation>
    </message>
    <message>
        <source>the board is said to be decided by limit set %1, which is not there</source>
        <translation>die Übersicht ist angeblich nach dem Grenzwertsatz %1 entschieden, den es nicht gibt</translation>
    </message>
    <message>
        <source>the board shows it</source>
        <translation>die Übersicht zeigt ihn</translation>
    </message>
    <message>
        <source>the cable crew</source>
        <translation>die Kabelmannschaft</translation>
    </message>
    <message>
        <source>the cable is at about %1 °F, not %2 °F</source>
        <translation>das Kabel hat etwa %1 °F, nicht %2 °F</translation>
    </message>
    <message>
        <source>the chain should end with event %1, and ends with this one otherwise</source>
        <translation>die Kette sollte mit Ereignis %1 enden und endet hier anders</translation>
    </message>
    <message>
        <source>the character %1</source>
        <translation>das Zeichen %1</translation>
    </message>
    <message>
        <source>the check digits of "%1" do not fit: a character was misread</source>
        <translation>die Prüfziffern von „%1“ passen nicht: ein Zeichen wurde falsch gelesen</translation>
    </message>
    <message>
        <source>the circuit was changed from %1 to %2</source>
        <translation>der Anschluss wurde von %1 in %2 geändert</translation>
    </message>
    <message>
        <source>the clock of its station was more than a day ahead</source>
        <translation>die Uhr der Station ging mehr als einen Tag vor</translation>
    </message>
    <message>
        <source>the columns chosen</source>
        <translation>die gewählten Spalten</translation>
    </message>
    <message>
        <source>the columns of last time</source>
        <translation>die Spalten vom letzten Mal</translation>
    </message>
    <message>
        <source>the confidence must lie between 0 and 1, such as 0.95</source>
        <translation>die Aussagewahrscheinlichkeit muss zwischen 0 und 1 liegen, etwa 0,95</translation>
    </message>
    <message>
        <source>the confirmation of %1</source>
        <translation>die Bestätigung zu %1</translation>
    </message>
    <message>
        <source>the connection to the server was lost at the last step, and it cannot be asked whether the change was kept: look whether it is there before it is entered again</source>
        <translation>Die Verbindung zum Server ging im letzten Schritt verloren, und er kann nicht gefragt werden, ob die Änderung erhalten ist: vor einer erneuten Eingabe nachsehen, ob sie vorhanden ist</translation>
    </message>
    <message>
        <source>the connection to the server was lost; nothing was changed</source>
        <translation>Die Verbindung zum Server ging verloren; nichts wurde geändert</translation>
    </message>
    <message>
        <source>the customer</source>
        <translation>Kunde</translation>
    </message>
    <message>
        <source>the customer's name was changed</source>
        <translation>der Name des Kunden wurde geändert</translation>
    </message>
    <message>
        <source>the database cannot be opened</source>
        <translation>die Datenbank lässt sich nicht öffnen</translation>
    </message>
    <message>
        <source>the database cannot be read from the disk</source>
        <translation>die Datenbank lässt sich nicht vom Datenträger lesen</translation>
    </message>
    <message>
        <source>the database cannot be written: it is read-only</source>
        <translation>in die Datenbank lässt sich nicht schreiben: sie ist nur lesbar</translation>
    </message>
    <message>
        <source>the database does not say its %1</source>
        <translation>die Datenbank nennt dies nicht: %1</translation>
    </message>
    <message>
        <source>the database does not say its station</source>
        <translation>die Datenbank nennt ihre Station nicht</translation>
    </message>
    <message>
        <source>the database failed: %1 (%2)</source>
        <translation>die Datenbank versagte: %1 (%2)</translation>
    </message>
    <message>
        <source>the database is cut short</source>
        <translation>die Datenbank ist abgeschnitten</translation>
    </message>
    <message>
        <source>the database is cut short; restore it from a backup</source>
        <translation>die Datenbank ist abgeschnitten; bitte aus einer Sicherung wiederherstellen</translation>
    </message>
    <message>
        <source>the database is damaged (%1)</source>
        <translation>die Datenbank ist beschädigt (%1)</translation>
    </message>
    <message>
        <source>the database is damaged (%1); restore it from a backup</source>
        <translation>die Datenbank ist beschädigt (%1); bitte aus einer Sicherung wiederherstellen</translation>
    </message>
    <message>
        <source>the database is damaged; restore it from a backup</source>
        <translation>die Datenbank ist beschädigt; bitte aus einer Sicherung wiederherstellen</translation>
    </message>
    <message>
        <source>the database is locked by another program</source>
        <translation>die Datenbank ist von einem anderen Programm gesperrt</translation>
    </message>
    <message>
        <source>the database is locked by another program; nothing was changed</source>
        <translation>die Datenbank ist von einem anderen Programm gesperrt; nichts wurde geändert</translation>
    </message>
    <message>
        <source>the database is open in a program; close it before restoring</source>
        <translation>die Datenbank ist in einem Programm geöffnet; vor dem Wiederherstellen schließen</translation>
    </message>
    <message>
        <source>the database is read-only here</source>
        <translation>die Datenbank ist hier nur lesbar</translation>
    </message>
    <message>
        <source>the database may not be opened</source>
        <translation>die Datenbank darf nicht geöffnet werden</translation>
    </message>
    <message>
        <source>the database must be made with the encoding UTF8 and the locale C (createdb --template template0 --encoding UTF8 --locale C)</source>
        <translation>Die Datenbank muss mit der Kodierung UTF8 und der Locale C angelegt sein (createdb --template template0 --encoding UTF8 --locale C)</translation>
    </message>
    <message>
        <source>the day that was promised first, if it is another now</source>
        <translation>der zuerst zugesagte Tag, wenn es jetzt ein anderer ist</translation>
    </message>
    <message>
        <source>the disk does not allow a write-ahead log</source>
        <translation>der Datenträger lässt kein Vorausprotokoll zu</translation>
    </message>
    <message>
        <source>the disk failed at the last step, and the change may have been kept or not: look whether it is there before it is entered again</source>
        <translation>der Datenträger versagte beim letzten Schritt, und die Änderung kann behalten sein oder nicht: vor erneutem Eingeben nachsehen, ob sie da ist</translation>
    </message>
    <message>
        <source>the disk holding the database is damaged</source>
        <translation>der Datenträger mit der Datenbank ist beschädigt</translation>
    </message>
    <message>
        <source>the disk is full</source>
        <translation>der Datenträger ist voll</translation>
    </message>
    <message>
        <source>the disk is full; nothing was changed</source>
        <translation>der Datenträger ist voll; nichts wurde geändert</translation>
    </message>
    <message>
        <source>the disk refused to write</source>
        <translation>der Datenträger nahm nichts an</translation>
    </message>
    <message>
        <source>the disk refused to write; nothing was changed</source>
        <translation>der Datenträger nahm nichts an; nichts wurde geändert</translation>
    </message>
    <message>
        <source>the dispatcher, to be sent again</source>
        <translation>die Disposition, um neu geschickt zu werden</translation>
    </message>
    <message>
        <source>the dispatcher, to be sent again, %1</source>
        <translation>die Disposition, um neu geschickt zu werden, %1</translation>
    </message>
    <message>
        <source>the errors must be from 0 to the number of bits</source>
        <translation>die Fehler müssen zwischen 0 und der Zahl der Bits liegen</translation>
    </message>
    <message>
        <source>the first day is kept beside it</source>
        <translation>der ursprüngliche Tag bleibt vermerkt</translation>
    </message>
    <message>
        <source>the folder cannot be made</source>
        <translation>der Ordner lässt sich nicht anlegen</translation>
    </message>
    <message>
        <source>the folder cannot be written, and no backup was made; name another place</source>
        <translation>in den Ordner lässt sich nicht schreiben, und es wurde keine Sicherung gemacht; bitte einen anderen Ort nennen</translation>
    </message>
    <message>
        <source>the folder does not exist</source>
        <translation>den Ordner gibt es nicht</translation>
    </message>
    <message>
        <source>the folder of keys cannot be kept from others</source>
        <translation>der Ordner der Schlüssel lässt sich vor anderen nicht schützen</translation>
    </message>
    <message>
        <source>the folder of keys cannot be made</source>
        <translation>der Ordner der Schlüssel lässt sich nicht anlegen</translation>
    </message>
    <message>
        <source>the folder of the database cannot be made</source>
        <translation>der Ordner der Datenbank lässt sich nicht anlegen</translation>
    </message>
    <message>
        <source>the folder of the database cannot be written</source>
        <translation>in den Ordner der Datenbank lässt sich nicht schreiben</translation>
    </message>
    <message>
        <source>the form of the records is told as %1</source>
        <translation>die Form des Datenbestands ist als %1 angegeben</translation>
    </message>
    <message>
        <source>the head of the log cannot be kept</source>
        <translation>der Kopf des Protokolls lässt sich nicht aufbewahren</translation>
    </message>
    <message>
        <source>the head of the log that was kept cannot be read</source>
        <translation>der aufbewahrte Kopf des Protokolls lässt sich nicht lesen</translation>
    </message>
    <message>
        <source>the history is broken (%1 event %2: %3)</source>
        <translation>der Verlauf ist unterbrochen (%1 Ereignis %2: %3)</translation>
    </message>
    <message>
        <source>the identifiers of the line were changed</source>
        <translation>die Kennungen des Anschlusses wurden geändert</translation>
    </message>
    <message>
        <source>the installer</source>
        <translation>Monteur</translation>
    </message>
    <message>
        <source>the installer's own work</source>
        <translation>des Monteurs eigene Arbeit</translation>
    </message>
    <message>
        <source>the issuer</source>
        <translation>der Aussteller</translation>
    </message>
    <message>
        <source>the issuer, key %1</source>
        <translation>der Aussteller, Schlüssel %1</translation>
    </message>
    <message>
        <source>the jack or terminal where the line ends</source>
        <translation>der Dose oder Klemme, an der der Anschluss endet</translation>
    </message>
    <message>
        <source>the key cannot be read</source>
        <translation>der Schlüssel lässt sich nicht lesen</translation>
    </message>
    <message>
        <source>the key cannot be written</source>
        <translation>der Schlüssel lässt sich nicht schreiben</translation>
    </message>
    <message>
        <source>the key of the station is not in the records</source>
        <translation>der Schlüssel der Station steht nicht in den Aufzeichnungen</translation>
    </message>
    <message>
        <source>the key that seals it is not on this machine.</source>
        <translation>der Schlüssel, der es versiegelt, ist nicht auf diesem Rechner.</translation>
    </message>
    <message>
        <source>the kind of line was changed</source>
        <translation>die Art des Anschlusses wurde geändert</translation>
    </message>
    <message>
        <source>the larger of the differences of the losses at 404 and 2804 Hz from that at 1004 Hz</source>
        <translation>die größere der Abweichungen der Dämpfung bei 404 und 2804 Hz von der bei 1004 Hz</translation>
    </message>
    <message>
        <source>the largest on any two of tip, ring and ground, on a dead pair disconnected at both ends</source>
        <translation>der größte Wert zwischen je zweien von a‑Ader, b‑Ader und Erde, an einer spannungsfreien, beidseitig abgetrennten Doppelader</translation>
    </message>
    <message>
        <source>the last page could not be ended</source>
        <translation>die letzte Seite ließ sich nicht abschließen</translation>
    </message>
    <message>
        <source>the least of each wire to ground and wire to wire, on a dead pair disconnected at both ends</source>
        <translation>der kleinste Wert jeder Ader gegen Erde und Ader gegen Ader, an einer spannungsfreien, beidseitig abgetrennten Doppelader</translation>
    </message>
    <message>
        <source>the letter %1</source>
        <translation>der Buchstabe %1</translation>
    </message>
    <message>
        <source>the limit</source>
        <translation>Grenzwert</translation>
    </message>
    <message>
        <source>the limit: %1</source>
        <translation>Grenzwert: %1</translation>
    </message>
    <message>
        <source>the line</source>
        <translation>die Leitung</translation>
    </message>
    <message>
        <source>the line of order %1 works again: nothing is left behind</source>
        <translation>der Anschluss des Auftrags %1 funktioniert wieder: es wird nichts hinterlassen</translation>
    </message>
    <message>
        <source>the link</source>
        <translation>Punkt-zu-Punkt-Verbindung</translation>
    </message>
    <message>
        <source>the login %1 has no role here: the owner of the database gives it one of installer, dispatcher and supervisor (GRANT installer TO …)</source>
        <translation>die Anmeldung %1 hat hier keine Rolle: Der Eigentümer der Datenbank gibt ihr eine von installer, dispatcher und supervisor (GRANT installer TO …)</translation>
    </message>
    <message>
        <source>the login may not do that in these records</source>
        <translation>Die Anmeldung hat dazu in diesem Datenbestand kein Recht</translation>
    </message>
    <message>
        <source>the measurements name no pair</source>
        <translation>die Messungen nennen keine Doppelader</translation>
    </message>
    <message>
        <source>the meter was wrong</source>
        <translation>das Messgerät war falsch</translation>
    </message>
    <message>
        <source>the network termination (NT)</source>
        <translation>des Netzabschlusses (NT)</translation>
    </message>
    <message>
        <source>the number of bits must be at least 1</source>
        <translation>die Zahl der Bits muss mindestens 1 sein</translation>
    </message>
    <message>
        <source>the number that belongs to it; may be empty</source>
        <translation>die zugehörige Rufnummer; darf leer sein</translation>
    </message>
    <message>
        <source>the number that they gave it</source>
        <translation>die dort vergebene Nummer</translation>
    </message>
    <message>
        <source>the office (station %1)</source>
        <translation>dem Büro (Station %1)</translation>
    </message>
    <message>
        <source>the office has %1</source>
        <translation>die Vermittlungsstelle hat %1</translation>
    </message>
    <message>
        <source>the order</source>
        <translation>der Auftrag</translation>
    </message>
    <message>
        <source>the order that is changed</source>
        <translation>der Auftrag, der geändert wird</translation>
    </message>
    <message>
        <source>the order was changed meanwhile</source>
        <translation>der Auftrag wurde inzwischen geändert</translation>
    </message>
    <message>
        <source>the order was changed while a van had it</source>
        <translation>der Auftrag wurde geändert, während ein Wagen ihn hatte</translation>
    </message>
    <message>
        <source>the order was closed meanwhile</source>
        <translation>der Auftrag wurde inzwischen geschlossen</translation>
    </message>
    <message>
        <source>the page</source>
        <translation>die Seite</translation>
    </message>
    <message>
        <source>the page could not be begun</source>
        <translation>die Seite ließ sich nicht beginnen</translation>
    </message>
    <message>
        <source>the pair is about %1 %4 long, %2 % longer than the %3 %4 on record</source>
        <translation>die Doppelader ist etwa %1 %4 lang, %2 % länger als die verzeichneten %3 %4</translation>
    </message>
    <message>
        <source>the pair is about %1 %4 long, %2 % shorter than the %3 %4 on record</source>
        <translation>die Doppelader ist etwa %1 %4 lang, %2 % kürzer als die verzeichneten %3 %4</translation>
    </message>
    <message>
        <source>the pair is loaded: %1 coils of 88 mH, the first 3000 ft from the office, then each 6000 ft</source>
        <translation>die Doppelader ist bespult: %1 Spulen mit 88 mH, die erste 3000 ft von der Vermittlungsstelle, dann alle 6000 ft</translation>
    </message>
    <message>
        <source>the pair was mended or changed</source>
        <translation>die Doppelader wurde behoben oder gewechselt</translation>
    </message>
    <message>
        <source>the power company</source>
        <translation>das Elektrizitätswerk</translation>
    </message>
    <message>
        <source>the premises were changed</source>
        <translation>der Standort wurde geändert</translation>
    </message>
    <message>
        <source>the present database cannot be kept</source>
        <translation>die jetzige Datenbank lässt sich nicht aufbewahren</translation>
    </message>
    <message>
        <source>the program holds no limits</source>
        <translation>das Programm enthält keine Grenzwerte</translation>
    </message>
    <message>
        <source>the rate of a capture must be 56000, 64000, 112000 or 128000</source>
        <translation>die Bitrate eines Mitschnitts muss 56000, 64000, 112000 oder 128000 sein</translation>
    </message>
    <message>
        <source>the records call themselves station %1, and the log ends with station %2</source>
        <translation>der Datenbestand nennt sich Station %1, und das Protokoll endet mit Station %2</translation>
    </message>
    <message>
        <source>the records hold something unreadable: %1 of %2 %3</source>
        <translation>der Datenbestand enthält etwas Unlesbares: %1 von %2 %3</translation>
    </message>
    <message>
        <source>the records of the station are in use twice</source>
        <translation>die Aufzeichnungen der Station werden doppelt benutzt</translation>
    </message>
    <message>
        <source>the records refuse this value</source>
        <translation>der Datenbestand nimmt diesen Wert nicht an</translation>
    </message>
    <message>
        <source>the register has none of this desk</source>
        <translation>das Verzeichnis kennt keine Nummer dieser Stelle</translation>
    </message>
    <message>
        <source>the roles installer, dispatcher and supervisor are not there, or have no rights, and this login may not make them: %1</source>
        <translation>die Rollen installer, dispatcher und supervisor sind nicht da oder haben keine Rechte, und diese Anmeldung darf sie nicht anlegen: %1</translation>
    </message>
    <message>
        <source>the rows that the event sealed cannot be read</source>
        <translation>die Zeilen, die das Ereignis versiegelt hat, lassen sich nicht lesen</translation>
    </message>
    <message>
        <source>the search index does not say what the rows say</source>
        <translation>der Suchindex sagt nicht, was die Zeilen sagen</translation>
    </message>
    <message>
        <source>the server cannot be reached</source>
        <translation>Der Server ist nicht erreichbar</translation>
    </message>
    <message>
        <source>the server does not take this login or its password</source>
        <translation>Der Server nimmt diese Anmeldung oder ihr Passwort nicht an</translation>
    </message>
    <message>
        <source>the server has no such database</source>
        <translation>Der Server hat keine solche Datenbank</translation>
    </message>
    <message>
        <source>the server must be PostgreSQL 15 or newer</source>
        <translation>Der Server muss PostgreSQL 15 oder neuer sein</translation>
    </message>
    <message>
        <source>the server takes no more connections now</source>
        <translation>Der Server nimmt zurzeit keine weiteren Verbindungen an</translation>
    </message>
    <message>
        <source>the services were changed</source>
        <translation>die Dienste wurden geändert</translation>
    </message>
    <message>
        <source>the serving office</source>
        <translation>die Vermittlungsstelle</translation>
    </message>
    <message>
        <source>the signature does not fit what is witnessed: %1</source>
        <translation>die Signatur passt nicht zu dem, was bezeugt wird: %1</translation>
    </message>
    <message>
        <source>the statement that starts here has no end</source>
        <translation>die Anweisung, die hier beginnt, hat kein Ende</translation>
    </message>
    <message>
        <source>the terminal</source>
        <translation>Endgerät</translation>
    </message>
    <message>
        <source>the terminal was mended or changed</source>
        <translation>das Endgerät wurde behoben oder gewechselt</translation>
    </message>
    <message>
        <source>the transaction has ended already</source>
        <translation>die Transaktion ist schon beendet</translation>
    </message>
    <message>
        <source>the unusual space or mark U+%1</source>
        <translation>das ungewöhnliche Leer- oder Sonderzeichen U+%1</translation>
    </message>
    <message>
        <source>the verdict was “%1”</source>
        <translation>das Urteil war „%1“</translation>
    </message>
    <message>
        <source>their SPIDs</source>
        <translation>ihre SPIDs</translation>
    </message>
    <message>
        <source>their TEIs</source>
        <translation>ihre TEIs</translation>
    </message>
    <message>
        <source>their numbers from the list, such as 2 5</source>
        <translation>ihre Nummern aus der Liste, etwa 2 5</translation>
    </message>
    <message>
        <source>there is a %1</source>
        <translation>es gibt eine %1</translation>
    </message>
    <message>
        <source>there is no certificate %1</source>
        <translation>es gibt kein Zertifikat %1</translation>
    </message>
    <message>
        <source>there is no order %1</source>
        <translation>es gibt keinen Auftrag %1</translation>
    </message>
    <message>
        <source>there is no statement %1</source>
        <translation>es gibt keine Anweisung %1</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>diese Datei gibt es nicht</translation>
    </message>
    <message>
        <source>this variant has no SPID</source>
        <translation>diese Variante hat keine SPID</translation>
    </message>
    <message>
        <source>ticket of the utility or the office; a contact with power needs the utility's, or a supervisor</source>
        <translation>Vorgang des Stromversorgers oder der Vermittlungsstelle; ein Kontakt mit Starkstrom braucht den des Stromversorgers oder eine Aufsicht</translation>
    </message>
    <message>
        <source>tip and ground</source>
        <translation>a‑Ader und Erde</translation>
    </message>
    <message>
        <source>tip and ring</source>
        <translation>a‑Ader und b‑Ader</translation>
    </message>
    <message>
        <source>tip ground</source>
        <translation>a‑Ader gegen Erde</translation>
    </message>
    <message>
        <source>tip positive to ring</source>
        <translation>a‑Ader positiv gegen b‑Ader</translation>
    </message>
    <message>
        <source>tip positive to ring, on-hook</source>
        <translation>a‑Ader positiv gegen b‑Ader, aufgelegt</translation>
    </message>
    <message>
        <source>tip ring</source>
        <translation>a‑Ader gegen b‑Ader</translation>
    </message>
    <message>
        <source>tip to ground</source>
        <translation>a gegen Erde</translation>
    </message>
    <message>
        <source>tip to ground %1</source>
        <translation>a gegen Erde %1</translation>
    </message>
    <message>
        <source>tip to ring</source>
        <translation>a gegen b</translation>
    </message>
    <message>
        <source>tip to ring %1</source>
        <translation>a gegen b %1</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>an %1</translation>
    </message>
    <message>
        <source>to any number that answers</source>
        <translation>an eine beliebige Rufnummer, die antwortet</translation>
    </message>
    <message>
        <source>to be settled: %1</source>
        <translation>zu klären: %1</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>today unless said</source>
        <translation>leer: heute</translation>
    </message>
    <message>
        <source>tomorrow</source>
        <translation>morgen</translation>
    </message>
    <message>
        <source>too deeply nested document</source>
        <translation>zu tief verschachtelt</translation>
    </message>
    <message>
        <source>too large document</source>
        <translation>zu lang</translation>
    </message>
    <message>
        <source>transit</source>
        <translation>Transitnetz</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>true oder false</translation>
    </message>
    <message>
        <source>two stations have it with different content</source>
        <translation>zwei Stationen haben es mit verschiedenem Inhalt</translation>
    </message>
    <message>
        <source>two stations issued a certificate</source>
        <translation>zwei Stationen haben ein Zertifikat ausgestellt</translation>
    </message>
    <message>
        <source>two stations worked on it</source>
        <translation>zwei Stationen haben daran gearbeitet</translation>
    </message>
    <message>
        <source>two stations worked on the order</source>
        <translation>zwei Stationen haben am Auftrag gearbeitet</translation>
    </message>
    <message>
        <source>type the digit %1</source>
        <translation>die Ziffer %1 eingeben</translation>
    </message>
    <message>
        <source>unavailable</source>
        <translation>nicht verfügbar</translation>
    </message>
    <message>
        <source>unavailable seconds</source>
        <translation>nicht verfügbare Sekunden</translation>
    </message>
    <message>
        <source>unfolded</source>
        <translation>aufgeklappt</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>unterminated array</source>
        <translation>nicht abgeschlossene Liste</translation>
    </message>
    <message>
        <source>unterminated object</source>
        <translation>nicht abgeschlossenes Objekt</translation>
    </message>
    <message>
        <source>unterminated string</source>
        <translation>nicht abgeschlossene Zeichenkette</translation>
    </message>
    <message>
        <source>until %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>up</source>
        <translation>steht</translation>
    </message>
    <message>
        <source>up and down change it</source>
        <translation>Pfeil auf und ab ändern ihn</translation>
    </message>
    <message>
        <source>upper bound</source>
        <translation>obere Schranke</translation>
    </message>
    <message>
        <source>user</source>
        <translation>Nutzer</translation>
    </message>
    <message>
        <source>user %1</source>
        <translation>Benutzer %1</translation>
    </message>
    <message>
        <source>version</source>
        <translation>Fassung</translation>
    </message>
    <message>
        <source>visit</source>
        <translation>Einsatz</translation>
    </message>
    <message>
        <source>voice</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>voice and data</source>
        <translation>Sprache und Daten</translation>
    </message>
    <message>
        <source>void</source>
        <translation>Streichung</translation>
    </message>
    <message>
        <source>void a hazard, or an entry that is another's or of an earlier visit</source>
        <translation>eine Gefahr, einen fremden Eintrag oder einen eines früheren Einsatzes für ungültig erklären</translation>
    </message>
    <message>
        <source>void an entry of one's own</source>
        <translation>einen eigenen Eintrag für ungültig erklären</translation>
    </message>
    <message>
        <source>voided by %1: %2</source>
        <translation>für ungültig erklärt von %1: %2</translation>
    </message>
    <message>
        <source>waiting on %1</source>
        <translation>wartet auf %1</translation>
    </message>
    <message>
        <source>waits</source>
        <translation>wartet</translation>
    </message>
    <message>
        <source>waits on %1</source>
        <translation>wartet auf: %1</translation>
    </message>
    <message>
        <source>warmth raises resistance and loss by a few hundredths</source>
        <translation>Wärme erhöht Widerstand und Dämpfung um einige Hundertstel</translation>
    </message>
    <message>
        <source>warning</source>
        <translation>Warnung</translation>
    </message>
    <message>
        <source>was cancelled</source>
        <translation>wurde abgebrochen</translation>
    </message>
    <message>
        <source>was changed after it was recorded</source>
        <translation>wurde geändert, nachdem es eingetragen war</translation>
    </message>
    <message>
        <source>was changed by another program (%1)</source>
        <translation>wurde von einem anderen Programm geändert (%1)</translation>
    </message>
    <message>
        <source>was due on %1: not within its calibration when it was used</source>
        <translation>fällig gewesen am %1: bei der Benutzung außerhalb seiner Kalibrierung</translation>
    </message>
    <message>
        <source>was written by a newer version of this program, and was left as it is</source>
        <translation>stammt von einer neueren Version dieses Programms und blieb, wie es ist</translation>
    </message>
    <message>
        <source>weather</source>
        <translation>Wetter</translation>
    </message>
    <message>
        <source>wet</source>
        <translation>nass</translation>
    </message>
    <message>
        <source>wetting current, wet line</source>
        <translation>Frittstrom, benetzte Leitung</translation>
    </message>
    <message>
        <source>what feeds the NT, in words</source>
        <translation>was den NT speist, in Worten</translation>
    </message>
    <message>
        <source>what is dialled before an outside number</source>
        <translation>was vor einer Nummer nach außen gewählt wird</translation>
    </message>
    <message>
        <source>what is due by then; each installer's list</source>
        <translation>was bis dahin fällig ist; je Monteur eine Liste</translation>
    </message>
    <message>
        <source>what is missing</source>
        <translation>was fehlt</translation>
    </message>
    <message>
        <source>what is ordered</source>
        <translation>was bestellt ist</translation>
    </message>
    <message>
        <source>what it is, in words</source>
        <translation>was es ist, in Worten</translation>
    </message>
    <message>
        <source>what it says was changed</source>
        <translation>sein Inhalt wurde geändert</translation>
    </message>
    <message>
        <source>what it shall be; empty clears it</source>
        <translation>was es sein soll; leer löscht es</translation>
    </message>
    <message>
        <source>what it showed; may be left empty</source>
        <translation>was sie zeigte; darf leer bleiben</translation>
    </message>
    <message>
        <source>what its switch speaks, where an order says nothing</source>
        <translation>was ihre Vermittlung spricht, wo ein Auftrag nichts sagt</translation>
    </message>
    <message>
        <source>what the person may do; installer where it is empty</source>
        <translation>was die Person darf; leer: installer</translation>
    </message>
    <message>
        <source>what the work takes: people, ladder, vehicle</source>
        <translation>was die Arbeit braucht: Leute, Leiter, Fahrzeug</translation>
    </message>
    <message>
        <source>when somebody answers there, in words</source>
        <translation>wann dort jemand antwortet, in Worten</translation>
    </message>
    <message>
        <source>where it is known</source>
        <translation>wo es bekannt ist</translation>
    </message>
    <message>
        <source>where it is saved</source>
        <translation>wo gespeichert wird</translation>
    </message>
    <message>
        <source>where it is saved, all in one</source>
        <translation>wo gespeichert wird, alles in einer Datei</translation>
    </message>
    <message>
        <source>where one is given: all digits without separators</source>
        <translation>wo eine vergeben ist: alle Ziffern ohne Trennzeichen</translation>
    </message>
    <message>
        <source>where the terminal stands</source>
        <translation>wo das Endgerät steht</translation>
    </message>
    <message>
        <source>whether the office is connected</source>
        <translation>ob die Vermittlungsstelle verbunden ist</translation>
    </message>
    <message>
        <source>whether the order brings the NT</source>
        <translation>ob der Auftrag den NT mitbringt</translation>
    </message>
    <message>
        <source>who called it off; it cannot be taken back</source>
        <translation>wer abgesagt hat; es lässt sich nicht zurücknehmen</translation>
    </message>
    <message>
        <source>who issues the certificates, as they print it</source>
        <translation>wer die Zertifikate ausstellt, wie sie es drucken</translation>
    </message>
    <message>
        <source>who says so, and under which reference</source>
        <translation>wer es sagt und unter welcher Referenz</translation>
    </message>
    <message>
        <source>whoever looks after the wiring of the premises</source>
        <translation>wer die Leitungen des Standorts betreut</translation>
    </message>
    <message>
        <source>whoever supplied the terminal equipment</source>
        <translation>wer das Endgerät geliefert hat</translation>
    </message>
    <message>
        <source>whoever takes it over</source>
        <translation>wer es übernimmt</translation>
    </message>
    <message>
        <source>whom a customer calls when a line fails</source>
        <translation>wen ein Kunde anruft, wenn ein Anschluss ausfällt</translation>
    </message>
    <message>
        <source>whom to ask for at the premises</source>
        <translation>nach wem dort zu fragen ist</translation>
    </message>
    <message>
        <source>why it is another day</source>
        <translation>warum es ein anderer Tag ist</translation>
    </message>
    <message>
        <source>wire</source>
        <translation>Drahtstärke</translation>
    </message>
    <message>
        <source>wiring</source>
        <translation>Verkabelung</translation>
    </message>
    <message>
        <source>wiring was mended</source>
        <translation>die Verdrahtung wurde behoben</translation>
    </message>
    <message>
        <source>within</source>
        <translation>eingehalten</translation>
    </message>
    <message>
        <source>without the coil the loss changes far more than the resistance, down at high frequencies and up in the voice band</source>
        <translation>ohne die Spule ändert sich die Dämpfung weit mehr als der Widerstand, bei hohen Frequenzen abwärts und im Sprachband aufwärts</translation>
    </message>
    <message>
        <source>without the tap there is less loss and the same resistance</source>
        <translation>ohne die Stichleitung ist die Dämpfung kleiner und der Widerstand gleich</translation>
    </message>
    <message>
        <source>worked</source>
        <translation>gearbeitet</translation>
    </message>
    <message>
        <source>worst of %1 s each</source>
        <translation>schlechteste von je %1 s</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>you</source>
        <translation>Sie</translation>
    </message>
    <message>
        <source>you act under it</source>
        <translation>unter ihr handeln Sie</translation>
    </message>
    <message>
        <source>°F, or °C; left empty: 70 °F</source>
        <translation>°F oder °C; leer: 70 °F</translation>
    </message>
    <message>
        <source>“%1” can be read as %2 or as %3: type the one that is meant</source>
        <translation>„%1“ kann als %2 oder als %3 gelesen werden: Geben Sie ein, was gemeint ist</translation>
    </message>
    <message>
        <source>“%1” is there already. Another name:</source>
        <translation>„%1“ gibt es schon. Anderer Name:</translation>
    </message>
</context>
</TS>
