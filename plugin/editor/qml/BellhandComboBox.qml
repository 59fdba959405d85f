// A choice of one from a list.
import QtQuick 2.9
import QtQuick.Controls 2.3

ComboBox {
    id: combo
    property BellhandTheme theme: BellhandTheme {}

    font: theme.body
    implicitHeight: theme.controlHeight
    opacity: enabled ? 1 : theme.disabledOpacity
    Keys.onShortcutOverride: function (event) { event.accepted = theme.isPanelKey(event.key) }
    // The list that drops down is the system's own, in these colours.
    palette.window: theme.ground
    palette.base: theme.ground
    palette.text: theme.text
    palette.windowText: theme.text
    palette.buttonText: theme.text
    palette.light: theme.listGround
    palette.midlight: theme.accent
    palette.highlight: theme.accent
    palette.highlightedText: theme.text

    contentItem: Text {
        leftPadding: combo.theme.gap
        rightPadding: arrow.width
        text: combo.displayText
        font: combo.font
        color: combo.theme.text
        verticalAlignment: Text.AlignVCenter
        elide: Text.ElideRight
    }
    indicator: Text {
        id: arrow
        x: combo.width - width
        height: combo.height
        width: combo.theme.controlHeight
        text: "\u25be"
        font: combo.font
        color: combo.theme.text
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
    }
    background: Rectangle {
        radius: 3
        color: combo.theme.button
        opacity: combo.hovered ? combo.theme.buttonHoverOpacity : combo.theme.buttonOpacity
        border.color: combo.theme.border
        border.width: combo.theme.isHighContrast ? combo.theme.borderWidth : 0
    }
    BellhandFocusRing { isShown: combo.visualFocus }
}
