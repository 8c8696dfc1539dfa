#include "app/desktop/vans/AddVanEntry.h"

#include "app/actions/InFile.h"
#include "app/desktop/DesktopContext.h"
#include "app/desktop/Language.h"
#include "app/desktop/Theme.h"
#include "app/desktop/vans/FileChoice.h"
#include "app/desktop/widgets/FieldMark.h"
#include "app/desktop/widgets/PageElements.h"
#include "app/desktop/widgets/SignLine.h"
#include "core/history/PublicKey.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLineEdit>

namespace loopwright {

AddVanEntry::AddVanEntry(DesktopContext &workplace, QWidget *parent)
    : QWidget(parent)
    , m_asker(workplace.longWork())
    , m_name(new QLineEdit)
    , m_key(new FileChoice(FileChoice::Way::Read, QStringLiteral("van.key"),
                           tr("The file with its key"), tr("Keys (*.txt);;All files (*)")))
    , m_renew(new QCheckBox(tr("It was restored, or has a new key")))
    , m_add(makeButton(tr("Add the van"), QStringLiteral("van.add"), [this] { add(); }))
    , m_told(new SignLine)
{
    m_name->setObjectName(QStringLiteral("van.name"));
    m_renew->setObjectName(QStringLiteral("van.renew"));
    m_told->setObjectName(QStringLiteral("van.told"));
    m_told->hide();
    auto *name = new FieldMark(tr("What the van is called"), m_name);
    name->setTight(true);
    m_add->setAutoDefault(false);
    connect(m_name, &QLineEdit::returnPressed, m_add, &QPushButton::click);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(makeMuted(tr("In the van: Vans, “Key of this station…”. That file says which "
                                   "station it is.")));
    auto *fields = new QHBoxLayout;
    fields->addWidget(name, 1);
    fields->addWidget(m_key, 2);
    column->addLayout(fields);
    auto *row = new QHBoxLayout;
    row->addWidget(m_add);
    row->addWidget(m_renew, 1);
    column->addLayout(row);
    column->addWidget(m_told);
    whenThemed(this, [column, fields, row] {
        column->setSpacing(em(0.5));
        fields->setSpacing(em(0.7));
        row->setSpacing(em(0.7));
    });
}

void AddVanEntry::begin()
{
    m_name->setFocus();
}

void AddVanEntry::add()
{
    if (m_asker.isBusy())
        return;
    m_told->hide();
    m_add->setEnabled(false);
    m_asker.ask<AddedVan>(
        [name = m_name->text().trimmed(), path = m_key->path(),
         renew = m_renew->isChecked()](Records &records, const Progress &) -> Result<AddedVan> {
            LOOPWRIGHT_ASSIGN(const auto bytes, readFile(path));
            return addVan(records, name, bytes, fileNameOf(path), renew);
        },
        [this](const Result<AddedVan> &added) { showAdded(added); });
}

void AddVanEntry::showAdded(const Result<AddedVan> &added)
{
    m_add->setEnabled(true);
    if (!added) {
        m_told->tell(Status::Failed, localized(added.error()));
        return;
    }
    m_name->clear();
    m_warns = !added->before.isEmpty();
    if (!added->before.isEmpty())
        m_told->tell(Status::Doubtful,
                     tr("%1 has the key %2 now, and had %3. Have the new one read out in the van "
                        "and compare: nobody else can say that it is its own.")
                         .arg(added->station, groupedFingerprint(added->fingerprint),
                              groupedFingerprint(added->before)));
    emit this->added(added->station);
}

} // namespace loopwright
