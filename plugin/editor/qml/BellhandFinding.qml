// One finding in the list: where and how grave, then why, then what to do instead.
import QtQuick 2.9
import QtQuick.Controls 2.3

ItemDelegate {
    id: item
    property BellhandTheme theme: BellhandTheme {}
    property var finding: null
    property string instead: ""
    property bool isCurrent: false

    readonly property color gravity: finding.severity === "impossible" ? theme.impossible
        : finding.severity === "risky" ? theme.risky : theme.text

    padding: theme.gap
    leftPadding: theme.gap + 6
    rightPadding: theme.gap + 8
    Accessible.name: finding.place + ", " + finding.written + ", " + finding.label + ": " + finding.message

    background: Rectangle {
        radius: 3
        color: item.hovered || item.isCurrent ? Qt.tint(item.theme.listGround, Qt.rgba(item.theme.accent.r, item.theme.accent.g, item.theme.accent.b, 0.3))
            : item.theme.listGround
        border.width: item.theme.isHighContrast ? item.theme.borderWidth : 0
        border.color: item.theme.border
        Rectangle {
            width: 4
            height: parent.height
            radius: 2
            color: item.gravity
        }
        Rectangle {
            anchors.fill: parent
            visible: item.isCurrent
            color: "transparent"
            radius: 3
            border.width: item.theme.focusWidth
            border.color: item.theme.focusRing
        }
    }
    contentItem: Column {
        spacing: 2
        BellhandText {
            width: parent.width
            font.bold: true
            text: item.finding.place + "  " + item.finding.written + "  " + item.finding.label
            color: item.gravity
        }
        BellhandText {
            width: parent.width
            text: item.finding.message
        }
        BellhandText {
            width: parent.width
            visible: item.finding.remedy !== ""
            text: item.instead + " " + item.finding.remedy
        }
    }
}
