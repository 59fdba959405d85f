// Shows what the keyboard would press; put inside the control it belongs to, a little larger than it.
import QtQuick 2.9

Rectangle {
    property BellhandTheme theme: BellhandTheme {}
    property bool isShown: false

    anchors.fill: parent
    anchors.margins: -theme.focusWidth - 1
    radius: 5
    color: "transparent"
    border.color: theme.focusRing
    border.width: theme.focusWidth
    visible: isShown
}
