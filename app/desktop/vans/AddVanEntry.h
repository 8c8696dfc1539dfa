#pragma once
// Makes a van known to the office, by the file with its key.

#include "app/actions/Vans.h"
#include "app/desktop/Lanes.h"

#include <QWidget>

class QCheckBox;
class QLineEdit;
class QPushButton;

namespace loopwright {

class DesktopContext;
class FileChoice;
class SignLine;

class AddVanEntry : public QWidget
{
    Q_OBJECT
public:
    explicit AddVanEntry(DesktopContext &workplace, QWidget *parent = nullptr);

    /// The keyboard goes to the name.
    void begin();
    /// Something of the van that was added last is to be read.
    bool warns() const { return m_warns; }

signals:
    void added(const QString &station);

private:
    void add();
    void showAdded(const Result<AddedVan> &added);

    Asker m_asker;
    QLineEdit *m_name;
    FileChoice *m_key;
    QCheckBox *m_renew;
    QPushButton *m_add;
    SignLine *m_told;
    bool m_warns = false;
};

} // namespace loopwright
