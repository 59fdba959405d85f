// One finding in the list: where and how grave, then why; the chosen one also what to do instead, with a button for each
// repair. What is chosen stands in a frame, how grave it is says the colour at its side.
import QtQuick 2.9
import QtQuick.Controls 2.3

ItemDelegate {
    id: item
    // The panel that it is a part of.
    property var owner: null
    property BellhandTheme theme: BellhandTheme {}
    property var finding: null
    property bool isChosen: false
    property bool hasKeys: false
    readonly property var chosen: owner.view.chosen
    readonly property color gravity: theme.gravityOf(finding.severity)

    padding: theme.gap
    leftPadding: theme.gap + 6
    rightPadding: theme.gap + 8
    Accessible.name: finding.place + ", " + finding.what + ", " + finding.label + ": " + finding.message

    background: Rectangle {
        radius: 3
        color: item.isChosen ? Qt.tint(item.theme.listGround, item.theme.veil(0.1))
            : item.hovered ? Qt.tint(item.theme.listGround, item.theme.veil(0.05))
            : item.theme.listGround
        border.width: item.isChosen ? (item.hasKeys ? item.theme.focusWidth : 1)
            : item.theme.isHighContrast ? item.theme.borderWidth : 0
        border.color: item.isChosen ? item.theme.text : item.theme.border
        Rectangle {
            x: item.isChosen ? 2 : 0
            y: x
            width: 4
            height: parent.height - 2 * y
            radius: 2
            color: item.gravity
        }
    }
    contentItem: Column {
        spacing: 2
        BellhandText {
            width: parent.width
            font.bold: true
            text: item.finding.place + ": " + item.finding.what
                + (item.isChosen && item.chosen.nth !== "" ? " (" + item.chosen.nth + ")" : "")
        }
        BellhandText {
            width: parent.width
            font.bold: true
            text: item.theme.signOf(item.finding.severity) + item.finding.label
            color: item.gravity
        }
        BellhandText {
            width: parent.width
            text: item.isChosen ? item.chosen.message : item.finding.message
        }
        BellhandText {
            width: parent.width
            visible: item.isChosen && item.finding.remedy !== ""
            text: item.owner.word("instead") + " " + item.finding.remedy
        }
        Flow {
            width: parent.width
            visible: item.isChosen && item.chosen.repairs.length > 0
            topPadding: 4
            spacing: 6
            Repeater {
                model: item.isChosen ? item.chosen.repairs : []
                BellhandButton {
                    objectName: "repair-" + index
                    text: modelData
                    isFramed: true
                    implicitHeight: Math.round(theme.fontPixels * 2)
                    width: Math.min(implicitWidth, parent.width)
                    onClicked: item.owner.act(function () { item.owner.panel.repair(index) })
                }
            }
        }
    }
}
