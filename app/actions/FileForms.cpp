#include "app/actions/FileForms.h"

#include "app/actions/Import.h"
#include "core/errortest/SecondsFile.h"
#include "core/identifiers/IdentifierList.h"
#include "core/loop/LoopMakeup.h"

#include <algorithm>

namespace loopwright {

namespace {

#define TEXT(text) QT_TRANSLATE_NOOP("core", text)

constexpr FileForm forms[] = {
    {"offices", TEXT("Serving offices"), "office import", officesLayout,
     "office,name,protocol_variant,test_lines,address,telephone,trouble_telephone\n"
     "north,North Street,ni2,loopback=217-555-0198,\"1 North Street, Millbrook\",217-555-0120,"
     "217-555-0121\n"},
    {"issuer", TEXT("Issuer of the certificates"), "issuer import", issuerLayout,
     "name,address,telephone,trouble_telephone,trouble_hours\n"
     "Millbrook Telephone,\"1 North Street, Millbrook\",217-555-0120,217-555-0121,"
     "\"every day, at any hour\"\n"},
    {"instruments", TEXT("Instruments"), "instrument import", instrumentsLayout,
     "instrument,serial,kind,calibrated_on,calibration_due\n"
     "set-1,4471,basic-rate test set,2026-09-01,2027-09-01\n"
     "meter-1,M-20,transmission meter,2026-11-03,2027-11-03\n"},
    {"installers", TEXT("Installers and other people"), "installer import", installersLayout,
     "installer,name,role,login\n"
     "carver,K. Carver,installer,\n"
     "lind,S. Lind,dispatcher,\n"
     "quill,R. Quill,supervisor,\n"},
    {"orders", TEXT("Orders"), "order import", ordersLayout,
     "order_number,order_type,due_date,customer,premises,circuit_number,kind,office,"
     "protocol_variant,pair,b1_services,b2_services,data_rate,dn_1,spid_1,tei_1,dn_2,spid_2,tei_2,"
     "nt_supplied,contact,remarks\n"
     "27-0001,new,2027-03-15,Kestrel Books,12 Mill Lane,N-BR-0001,bri,north,,C1-001,voice+data,"
     "voice+data,64000,2175550110,21755501100101,auto,2175550111,21755501110101,auto,yes,"
     "A. Kestrel,\"ring at the side door\"\n"
     "27-0002,new,2027-03-15,Kestrel Books,12 Mill Lane,N-AN-0001,analog,north,,C1-002,voice,,,"
     "2175550112,,,,,,no,A. Kestrel,\n"},
    {"changes", TEXT("Changes of orders"), "order set --in", plansLayout,
     "order_number,column,value\n"
     "27-0001,contact,B. Kestrel\n"
     "27-0002,access_notes,the key is next door\n"},
    {"identifiers", TEXT("SPIDs to check"), "check identifiers --in", identifierListLayout,
     "variant,spid,dn\n"
     "ni2,21755501100101,2175550110\n"
     "ni1-5ess,015550143001,5550143\n"},
    {"makeup", TEXT("Make-up of a pair"), "qualify loop", makeupLayout,
     "element,gauge_awg,length_ft\n"
     "section,26,6000\n"
     "bridged_tap,24,800\n"
     "section,24,3000\n"},
    {"seconds", TEXT("Seconds of a run"), "analyse seconds", secondsLayout,
     "second,bit_errors,sync_lost\n"
     "0,0,0\n"
     "1,3,0\n"
     "2,0,0\n"},
};

#undef TEXT

/// "dn_1 to dn_8".
QString numbered(const QString &column)
{
    return QString(column).replace('#', '1') + " to " + QString(column).replace('#', '8');
}

} // namespace

std::span<const FileForm> fileForms()
{
    return forms;
}

QStringList fileFormKeys()
{
    QStringList keys;
    for (const FileForm &form : forms)
        keys << QString::fromLatin1(form.key);
    return keys;
}

const FileForm *findFileForm(const QString &key)
{
    const auto found = std::ranges::find_if(
        forms, [&key](const FileForm &form) { return key == QLatin1StringView(form.key); });
    return found == std::end(forms) ? nullptr : found;
}

std::vector<FileColumn> columnsOf(const FileForm &form)
{
    const QString key = QString::fromLatin1(form.key);
    const CsvLayout layout = form.layout();
    std::vector<FileColumn> columns;
    for (const QString &name : layout.required + layout.optional)
        columns.push_back({name.contains('#') ? numbered(name) : name,
                           layout.required.contains(name), wordsOfColumn(key, name),
                           meaningOfColumn(key, name)});
    return columns;
}

QByteArray sampleOf(const FileForm &form)
{
    return QByteArray(form.sample).replace("\n", "\r\n");
}

} // namespace loopwright
