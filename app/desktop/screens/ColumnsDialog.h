#pragma once
// The columns of a kind of file that can be imported, what stands in each, and a sample to save.

#include <QDialog>

namespace loopwright {

struct FileForm;

class ColumnsDialog : public QDialog
{
    Q_OBJECT
public:
    explicit ColumnsDialog(const FileForm &form, QWidget *parent);

    /// The sample, as its import takes it.
    void saveSample(const QString &path);

signals:
    void said(const QString &sentence);

private:
    void askWhereToSave();

    const FileForm &m_form;
};

/// Opened; gone when it is closed. `form`: one of fileFormKeys().
ColumnsDialog *showColumnsOf(const QString &form, QWidget *parent);

} // namespace loopwright
