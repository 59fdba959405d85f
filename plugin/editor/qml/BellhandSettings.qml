// What is shown over the notes, and how exact a player is.
import QtQuick 2.9
import QtQuick.Controls 2.3
import QtQuick.Layouts 1.3

ColumnLayout {
    id: settings
    // The panel that it is a part of.
    property var owner: null
    readonly property var view: owner ? owner.view : null
    function word(name) { return view ? view.words[name] : "" }
    spacing: 4

    GridLayout {
        columns: settings.width < 380 ? 1 : 2
        columnSpacing: 10
        rowSpacing: 0
        Layout.fillWidth: true

        Repeater {
            model: ["fingered", "valves", "natural", "verdict", "colour", "onlyChanges", "quickValves", "widerBars"]
            BellhandCheckBox {
                id: box
                objectName: "show-" + modelData
                Layout.fillWidth: true
                text: settings.word(modelData)
                checked: !settings.view ? false
                    : modelData === "onlyChanges" ? settings.view.choice.show.repeat === "changes"
                    : modelData === "quickValves" ? settings.view.choice.show.quick === "valves"
                    : modelData === "widerBars" ? settings.view.choice.widerBars
                    : settings.view.choice.show[modelData]
                onClicked: settings.owner.act(function () { settings.owner.panel.decide(modelData, box.checked) })
            }
        }
    }

    GridLayout {
        columns: settings.width < 300 ? 1 : 2
        columnSpacing: 10
        rowSpacing: 4
        Layout.fillWidth: true

        BellhandText {
            text: settings.word("tolerance")
            Layout.fillWidth: true
            Layout.preferredHeight: tolerance.implicitHeight
            verticalAlignment: Text.AlignVCenter
        }
        BellhandSpinBox {
            id: tolerance
            objectName: "tolerance"
            editable: true
            stepSize: 5
            from: settings.view ? settings.view.toleranceRange.from : 0
            to: settings.view ? settings.view.toleranceRange.to : 0
            value: settings.view ? settings.view.choice.tolerance : 0
            Accessible.name: settings.word("tolerance")
            Accessible.description: settings.word("toleranceHint")
            ToolTip.visible: hovered
            ToolTip.delay: 600
            ToolTip.text: settings.word("toleranceHint")
            onValueModified: settings.owner.act(function () { settings.owner.panel.decide("tolerance", tolerance.value) })
        }

        BellhandText {
            text: settings.word("handOffset")
            Layout.fillWidth: true
            Layout.preferredHeight: handOffset.implicitHeight
            verticalAlignment: Text.AlignVCenter
        }
        BellhandSpinBox {
            id: handOffset
            objectName: "handOffset"
            editable: true
            stepSize: 5
            from: settings.view ? settings.view.handOffsetRange.from : 0
            to: settings.view ? settings.view.handOffsetRange.to : 0
            value: settings.view ? settings.view.choice.handOffset : 0
            Accessible.name: settings.word("handOffset")
            Accessible.description: settings.word("handOffsetHint")
            ToolTip.visible: hovered
            ToolTip.delay: 600
            ToolTip.text: settings.word("handOffsetHint")
            onValueModified: settings.owner.act(function () { settings.owner.panel.decide("handOffset", handOffset.value) })
        }
    }
}
