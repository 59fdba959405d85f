// A number to step up and down, or to type.
import QtQuick 2.9
import QtQuick.Controls 2.3

SpinBox {
    id: spin
    property BellhandTheme theme: BellhandTheme {}

    font: theme.body
    implicitHeight: theme.controlHeight
    implicitWidth: Math.round(theme.fontPixels * 8)
    leftPadding: theme.gap
    rightPadding: step.width
    opacity: enabled ? 1 : theme.disabledOpacity
    Keys.onShortcutOverride: function (event) { event.accepted = theme.isPanelKey(event.key) }

    // How wide the two steps are.
    readonly property Item step: Item { width: Math.round(spin.theme.fontPixels * 1.8) }

    contentItem: TextInput {
        text: spin.textFromValue(spin.value, spin.locale)
        font: spin.font
        color: spin.theme.text
        selectionColor: spin.theme.accent
        selectedTextColor: spin.theme.text
        selectByMouse: true
        verticalAlignment: Qt.AlignVCenter
        readOnly: !spin.editable
        validator: spin.validator
        Keys.onShortcutOverride: function (event) { event.accepted = spin.theme.isPanelKey(event.key) }
        inputMethodHints: Qt.ImhFormattedNumbersOnly
    }
    up.indicator: Item {
        x: spin.width - width
        width: spin.step.width
        height: spin.height / 2
        Text {
            anchors.centerIn: parent
            text: "\u25b4"
            font: spin.font
            color: spin.theme.text
            opacity: spin.value < spin.to ? (spin.up.hovered ? 1 : 0.8) : spin.theme.disabledOpacity
        }
    }
    down.indicator: Item {
        x: spin.width - width
        y: spin.height / 2
        width: spin.step.width
        height: spin.height / 2
        Text {
            anchors.centerIn: parent
            text: "\u25be"
            font: spin.font
            color: spin.theme.text
            opacity: spin.value > spin.from ? (spin.down.hovered ? 1 : 0.8) : spin.theme.disabledOpacity
        }
    }
    background: Rectangle {
        radius: 3
        color: spin.theme.fieldGround
        border.width: 1
        border.color: spin.hovered || spin.theme.isHighContrast ? spin.theme.text : spin.theme.line
    }
    BellhandFocusRing { isShown: spin.visualFocus || spin.activeFocus }
}
