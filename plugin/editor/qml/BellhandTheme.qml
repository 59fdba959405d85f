// The editor's own colours, font and sizes: from version 4 on as its theme says, before that as the system does.
import QtQuick 2.9

QtObject {
    id: theme

    // The theme that version 4 gives to everything it shows; it changes while the panel is open when the user changes it.
    readonly property var given: typeof ui !== "undefined" && ui && ui.theme ? ui.theme : null
    property SystemPalette system: SystemPalette {}

    readonly property color ground: given ? given.backgroundPrimaryColor : system.window
    readonly property color listGround: given ? given.backgroundSecondaryColor : system.base
    readonly property color fieldGround: given ? given.textFieldColor : system.base
    // Dark themes of version 3 give buttons the colour of the ground they stand on.
    readonly property color button: given ? given.buttonColor : isDark ? Qt.lighter(system.button, 1.7) : system.button
    readonly property color accent: given ? given.accentColor : system.highlight
    readonly property color accentText: given ? given.fontPrimaryColor : accent.hslLightness > 0.6 ? "#000000" : "#ffffff"
    readonly property color text: given ? given.fontPrimaryColor : system.windowText
    readonly property color line: given ? given.strokeColor : isDark ? system.light : system.mid
    // Themes of high contrast draw a border around everything that can be pressed.
    readonly property int borderWidth: given ? given.borderWidth : 1
    readonly property color border: isHighContrast ? text : line
    readonly property bool isHighContrast: given !== null && given.borderWidth > 0

    // Around what the keyboard would press.
    readonly property color focusRing: text
    readonly property int focusWidth: given ? Math.max(2, given.navCtrlBorderWidth) : 2

    readonly property real disabledOpacity: given ? given.itemOpacityDisabled : 0.4
    readonly property real buttonOpacity: given ? given.buttonOpacityNormal : 1
    readonly property real buttonHoverOpacity: given ? given.buttonOpacityHover : 0.8
    readonly property real buttonPressedOpacity: given ? given.buttonOpacityHit : 0.6
    readonly property real accentOpacity: given ? given.accentOpacityNormal : 0.5

    readonly property font body: given ? given.bodyFont : Qt.application.font
    readonly property int fontPixels: body.pixelSize > 0 ? body.pixelSize : Math.round(body.pointSize * 96 / 72)
    readonly property int controlHeight: Math.max(given ? given.defaultButtonSize : 32, Math.round(fontPixels * 2.2))
    readonly property int gap: Math.round(fontPixels / 2)

    readonly property bool isDark: ground.hslLightness < 0.5
    // Okabe and Ito's vermillion and blue, light or dark enough to be read on the ground.
    readonly property color impossible: isDark ? "#ff9a5c" : "#a84300"
    readonly property color risky: isDark ? "#7fc4f5" : "#005a8f"

    function gravityOf(severity) {
        return severity === "impossible" ? impossible : severity === "risky" ? risky : text
    }
    // As over the notes: told without colour too.
    function signOf(severity) {
        return severity === "impossible" ? "\u00d7 " : severity === "risky" ? "\u2248 " : ""
    }
    // The colour of the text, as thin as wanted.
    function veil(opacity) { return Qt.rgba(text.r, text.g, text.b, opacity) }

    // Version 4 moves through its own windows with these keys, whichever window has them: in the panel they are the panel's.
    function isPanelKey(key) {
        return [Qt.Key_Tab, Qt.Key_Backtab, Qt.Key_Up, Qt.Key_Down, Qt.Key_Left, Qt.Key_Right,
                Qt.Key_Space, Qt.Key_Return, Qt.Key_Enter, Qt.Key_Escape, Qt.Key_PageUp, Qt.Key_PageDown].indexOf(key) >= 0
    }
}
