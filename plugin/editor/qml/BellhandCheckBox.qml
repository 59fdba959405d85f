// A box to tick.
import QtQuick 2.9
import QtQuick.Controls 2.3

CheckBox {
    id: box
    property BellhandTheme theme: BellhandTheme {}

    font: theme.body
    padding: 3
    spacing: theme.gap
    opacity: enabled ? 1 : theme.disabledOpacity
    Keys.onShortcutOverride: function (event) { event.accepted = theme.isPanelKey(event.key) }

    indicator: Rectangle {
        x: box.leftPadding
        y: Math.round((box.height - height) / 2)
        width: Math.round(box.theme.fontPixels * 1.4)
        height: width
        radius: 2
        color: box.theme.fieldGround
        border.width: 1
        border.color: box.hovered || box.theme.isHighContrast || box.theme.isDark ? box.theme.text : box.theme.line
        Text {
            anchors.centerIn: parent
            visible: box.checked
            text: "\u2713"
            color: box.theme.text
            font.pixelSize: Math.round(box.theme.fontPixels * 1.2)
            font.bold: true
        }
        BellhandFocusRing { isShown: box.visualFocus }
    }
    contentItem: Text {
        leftPadding: box.indicator.width + box.spacing
        text: box.text
        font: box.font
        color: box.theme.text
        wrapMode: Text.WordWrap
        verticalAlignment: Text.AlignVCenter
    }
}
