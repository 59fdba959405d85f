// What changes the score: the two buttons that do the job, the hand's signs for the selected notes, and what was done.
import QtQuick 2.9
import QtQuick.Controls 2.3
import QtQuick.Layouts 1.3

ColumnLayout {
    id: actions
    // The panel that it is a part of.
    property var owner: null
    readonly property var view: owner ? owner.view : null
    function word(name) { return view ? view.words[name] : "" }
    spacing: 6

    function focusFirst() { annotate.forceActiveFocus(Qt.TabFocusReason) }

    GridLayout {
        columns: actions.width < 240 ? 2 : 4
        Layout.fillWidth: true
        BellhandButton {
            id: annotate
            objectName: "annotate"
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            text: actions.word("annotate")
            isMain: true
            onClicked: actions.owner.act(function () { actions.owner.panel.annotate() })
        }
        BellhandButton {
            objectName: "clear"
            Layout.fillWidth: true
            Layout.preferredWidth: 1
            text: actions.word("clear")
            onClicked: actions.owner.act(function () { actions.owner.panel.clear() })
        }
        Repeater {
            model: [{ sign: "stopped", text: "+", hint: "stoppedSign" }, { sign: "open", text: "o", hint: "openSign" }]
            BellhandButton {
                objectName: "sign-" + modelData.sign
                Layout.fillWidth: actions.width < 240
                Layout.preferredWidth: actions.width < 240 ? 1 : implicitHeight * 1.2
                text: modelData.text
                font.bold: true
                Accessible.name: actions.word(modelData.hint)
                ToolTip.visible: hovered
                ToolTip.delay: 600
                ToolTip.text: actions.word(modelData.hint)
                onClicked: actions.owner.act(function () { actions.owner.panel.sign(modelData.sign) })
            }
        }
    }

    // Room for two lines, so that nothing below moves when something is said. Where little room is the counts stand here.
    BellhandText {
        id: sentence
        objectName: "sentence"
        Layout.fillWidth: true
        Layout.minimumHeight: Math.ceil(2 * lineHeightOf.height)
        text: actions.owner && actions.owner.failure !== "" ? actions.owner.failure : !actions.view ? ""
            : actions.view.sentence === "" && actions.owner.isShort ? actions.view.counts : actions.view.sentence
        verticalAlignment: Text.AlignTop
        FontMetrics { id: lineHeightOf; font: sentence.font }
    }
}
