#pragma once
// How the papers that go to customers and into the file are set: sizes, colours, text styles.

#include "app/print/SheetBuilder.h"

namespace loopwright {

/// Sizes of one way to set a certificate: the first that fits on a page is taken.
struct Setting
{
    int body = 88;
    int small = 74;
    double rowGap = mm(1.5);     ///< above and below a row
    double sectionGap = mm(5.5); ///< between parts
};

/// Colours and text styles of one setting.
struct CertificateStyle
{
    Setting setting;
    PictureStyle ink = paperStyle(setting.small);

    TextStyle body() const { return {Face::Text, setting.body, ink.text}; }
    TextStyle strong() const { return {Face::Strong, setting.body, ink.text}; }
    TextStyle small() const { return {Face::Text, setting.small, ink.muted}; }
    TextStyle label() const { return {Face::Text, setting.small, ink.muted}; }
    TextStyle heading() const { return {Face::Strong, setting.body, ink.accent}; }
    TextStyle title() const { return {Face::Title, 230, ink.text}; }
    TextStyle digits(int size) const { return {Face::Digits, size, ink.text}; }
    TextStyle foot() const { return {Face::Text, 66, ink.muted}; }
};

} // namespace loopwright
