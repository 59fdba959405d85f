// How the selected note is stopped, and where the hand takes it. Its height stays, whatever note is asked about.
import QtQuick 2.9
import QtQuick.Controls 2.3
import QtQuick.Layouts 1.3

Rectangle {
    id: box
    // The panel that it is a part of.
    property var owner: null
    readonly property var view: owner ? owner.view : null
    function word(name) { return view ? view.words[name] : "" }
    property BellhandTheme theme: BellhandTheme {}
    readonly property var answer: view ? view.answer : null

    objectName: "answer"
    readonly property int wantedLines: owner && owner.isShort ? 4 : width < 360 ? 9 : 7
    readonly property int roomFor: owner ? Math.floor(owner.height * 0.22 / metrics.height) : 3
    implicitHeight: Math.ceil(Math.max(3, Math.min(wantedLines, roomFor)) * metrics.height) + 2 * theme.gap
    color: theme.listGround
    radius: 3
    border.width: theme.isHighContrast ? theme.borderWidth : 0
    border.color: theme.border
    Accessible.role: Accessible.StaticText
    Accessible.name: answer ? answer.heading + ", " + answer.label + ". " + answer.lines.join(" ") : box.word("noteAsked")

    FontMetrics { id: metrics; font: heading.font }

    Flickable {
        anchors.fill: parent
        anchors.margins: box.theme.gap
        clip: true
        contentHeight: lines.height
        boundsBehavior: Flickable.StopAtBounds
        ScrollBar.vertical: ScrollBar {}

        Column {
            id: lines
            width: parent.width
            spacing: 2
            BellhandText {
                id: heading
                width: parent.width
                visible: box.answer !== null
                font.bold: true
                text: !box.answer ? "" : box.answer.label === "" ? box.answer.heading
                    : box.answer.heading + ": " + box.theme.signOf(box.answer.verdict) + box.answer.label
                color: box.answer ? box.theme.gravityOf(box.answer.verdict) : box.theme.text
            }
            Repeater {
                model: box.answer ? box.answer.lines : [box.word("noteAsked")]
                BellhandText {
                    width: lines.width
                    text: modelData
                }
            }
        }
    }
}
