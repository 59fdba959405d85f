// A button. `isMain` for the one that does the job, `isQuiet` for one that stands in a line of text.
import QtQuick 2.9
import QtQuick.Controls 2.3

Button {
    id: button
    property BellhandTheme theme: BellhandTheme {}
    property bool isMain: false
    property bool isQuiet: false
    // For a button on a ground of its own colour.
    property bool isFramed: false

    font: theme.body
    implicitHeight: isQuiet ? Math.round(theme.fontPixels * 2) : theme.controlHeight
    leftPadding: isQuiet ? 4 : 10
    rightPadding: leftPadding
    opacity: enabled ? 1 : theme.disabledOpacity
    Keys.onShortcutOverride: function (event) { event.accepted = theme.isPanelKey(event.key) }
    Keys.onReturnPressed: clicked()
    Keys.onEnterPressed: clicked()

    contentItem: Text {
        text: button.text
        font: button.font
        color: button.isMain ? button.theme.accentText : button.theme.text
        horizontalAlignment: button.isQuiet ? Text.AlignLeft : Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
        elide: Text.ElideRight
    }
    background: Rectangle {
        radius: 3
        color: button.isMain ? button.theme.accent : button.theme.button
        opacity: button.isQuiet && !button.hovered && !button.down ? 0
            : button.down ? button.theme.buttonPressedOpacity
            : button.hovered ? button.theme.buttonHoverOpacity : button.theme.buttonOpacity
        border.color: button.isFramed ? button.theme.text : button.theme.border
        border.width: button.isFramed ? 1 : button.theme.isHighContrast ? button.theme.borderWidth : 0
    }
    BellhandFocusRing { isShown: button.visualFocus }
}
