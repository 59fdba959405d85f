// A line that folds something open and away.
import QtQuick 2.9

BellhandButton {
    property bool isOpen: false
    property string label: ""
    isQuiet: true
    text: (isOpen ? "\u25be " : "\u25b8 ") + label
    onClicked: isOpen = !isOpen
}
