// Words of the panel: plain, in the editor's font, over as many lines as they need.
import QtQuick 2.9
import QtQuick.Controls 2.3

Label {
    property BellhandTheme theme: BellhandTheme {}
    font.family: theme.body.family
    font.pixelSize: theme.fontPixels
    color: theme.text
    linkColor: theme.text
    wrapMode: Text.WordWrap
    textFormat: Text.PlainText
}
