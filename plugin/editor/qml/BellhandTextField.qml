// A line to type in.
import QtQuick 2.9
import QtQuick.Controls 2.3

TextField {
    id: field
    property BellhandTheme theme: BellhandTheme {}

    font: theme.body
    implicitHeight: theme.controlHeight
    leftPadding: theme.gap
    color: theme.text
    selectionColor: theme.accent
    selectedTextColor: theme.text
    selectByMouse: true
    opacity: enabled ? 1 : theme.disabledOpacity
    Keys.onShortcutOverride: function (event) { event.accepted = theme.isPanelKey(event.key) }

    background: Rectangle {
        radius: 3
        color: field.theme.fieldGround
        border.width: 1
        border.color: field.hovered || field.theme.isHighContrast ? field.theme.text : field.theme.line
    }
    BellhandFocusRing { isShown: field.activeFocus }
}
