// The panel itself: it draws what the script hands over and passes every click on. No logic lives here;
// it is long because it names every control of the window.
import QtQuick 2.9
import QtQuick.Window 2.2
import QtQuick.Controls 2.3
import QtQuick.Layouts 1.3

Pane {
    id: pane
    padding: 10

    property var panel: null
    property var view: null
    property string failure: ""

    function open(script, root, file) {
        try {
            panel = script.openPanel(script.hostOf(root, file, Qt))
            refresh()
            annotate.forceActiveFocus()
        } catch (error) {
            failure = "" + error
        }
    }

    function refresh() {
        view = panel.view()
    }

    function act(work) {
        if (!panel)
            return
        try {
            work()
            refresh()
        } catch (error) {
            failure = "" + error
        }
    }

    // The editor's own colours, in its light and its dark theme.
    SystemPalette { id: system }
    palette.window: system.window
    palette.windowText: system.windowText
    palette.base: system.base
    palette.text: system.text
    // Dark themes give buttons the colour of the ground they stand on.
    palette.button: isDark ? Qt.lighter(system.button, 1.7) : system.button
    palette.buttonText: system.buttonText
    palette.highlight: system.highlight
    palette.highlightedText: system.highlightedText
    palette.mid: system.mid
    palette.midlight: system.midlight
    palette.dark: system.dark
    palette.light: system.light

    readonly property bool isDark: system.window.hslLightness < 0.5
    // Okabe and Ito's vermillion and blue, light enough to be read on a dark ground.
    readonly property color impossibleColour: isDark ? "#ff9a5c" : "#a84300"
    readonly property color riskyColour: isDark ? "#7fc4f5" : "#005a8f"

    Timer {
        interval: 300
        repeat: true
        running: pane.panel !== null && pane.visible
        onTriggered: {
            // The editor keeps a closed panel alive, hidden, and tells it nothing.
            if (pane.Window.window && !pane.Window.window.visible)
                return
            try {
                if (pane.panel.tick())
                    pane.refresh()
            } catch (error) {
                pane.failure = "" + error
            }
        }
    }

    // A dock may be small: then all of it scrolls.
    Flickable {
        id: flick
        anchors.fill: parent
        clip: true
        contentWidth: width
        contentHeight: Math.max(height, column.implicitHeight)
        boundsBehavior: Flickable.StopAtBounds
        ScrollBar.vertical: ScrollBar {}

        ColumnLayout {
            id: column
            width: flick.width
            height: flick.contentHeight
            spacing: 6
            enabled: pane.view !== null

            ComboBox {
                id: horn
                objectName: "horn"
                Layout.fillWidth: true
                implicitHeight: 34
                model: pane.view ? pane.view.horns : []
                currentIndex: pane.view ? pane.view.hornIndex : -1
                Accessible.name: pane.view ? pane.view.words.horn : ""
                onActivated: pane.act(function () { pane.panel.chooseHorn(horn.currentIndex) })
            }

            GridLayout {
                columns: pane.width < 240 ? 1 : 2
                Layout.fillWidth: true
                Button {
                    id: annotate
                    objectName: "annotate"
                    Layout.fillWidth: true
                    implicitHeight: 34
                    text: pane.view ? pane.view.words.annotate : ""
                    highlighted: true
                    onClicked: pane.act(function () { pane.panel.annotate() })
                    Keys.onReturnPressed: clicked()
                    Keys.onEnterPressed: clicked()
                }
                Button {
                    objectName: "clear"
                    Layout.fillWidth: true
                    implicitHeight: 34
                    text: pane.view ? pane.view.words.clear : ""
                    onClicked: pane.act(function () { pane.panel.clear() })
                    Keys.onReturnPressed: clicked()
                    Keys.onEnterPressed: clicked()
                }
            }

            Label {
                objectName: "sentence"
                Layout.fillWidth: true
                wrapMode: Text.WordWrap
                textFormat: Text.PlainText
                text: pane.failure !== "" ? pane.failure : pane.view ? pane.view.sentence : ""
                visible: text !== ""
            }

            Button {
                id: options
                objectName: "options"
                property bool areOpen: pane.height > 560
                Layout.fillWidth: true
                implicitHeight: 28
                flat: true
                text: (areOpen ? "\u25be " : "\u25b8 ") + (pane.view ? pane.view.words.print : "")
                onClicked: areOpen = !areOpen
                Keys.onReturnPressed: clicked()
                Keys.onEnterPressed: clicked()
            }

            GridLayout {
                visible: options.areOpen
                columns: pane.width < 380 ? 1 : 2
                columnSpacing: 10
                rowSpacing: 0
                Layout.fillWidth: true

                Repeater {
                    model: ["fingered", "valves", "natural", "verdict", "colour", "onlyChanges"]
                    CheckBox {
                        id: box
                        objectName: "show-" + modelData
                        padding: 3
                        Layout.fillWidth: true
                        text: pane.view ? pane.view.words[modelData] : ""
                        checked: !pane.view ? false
                            : modelData === "onlyChanges" ? pane.view.choice.show.repeat === "changes"
                            : pane.view.choice.show[modelData]
                        onClicked: pane.act(function () {
                            if (modelData === "onlyChanges") pane.panel.chooseRepeats(box.checked)
                            else pane.panel.chooseShow(modelData, box.checked)
                        })
                    }
                }
            }

            GridLayout {
                visible: options.areOpen
                columns: pane.width < 300 ? 1 : 2
                columnSpacing: 10
                rowSpacing: 4
                Layout.fillWidth: true

                Label {
                    text: pane.view ? pane.view.words.tolerance : ""
                    wrapMode: Text.WordWrap
                    Layout.fillWidth: true
                }
                SpinBox {
                    id: tolerance
                    objectName: "tolerance"
                    editable: true
                    implicitHeight: 32
                    stepSize: 5
                    from: pane.view ? pane.view.toleranceRange.from : 0
                    to: pane.view ? pane.view.toleranceRange.to : 0
                    value: pane.view ? pane.view.choice.tolerance : 0
                    Accessible.name: pane.view ? pane.view.words.tolerance : ""
                    Accessible.description: pane.view ? pane.view.words.toleranceHint : ""
                    ToolTip.visible: hovered
                    ToolTip.delay: 600
                    ToolTip.text: pane.view ? pane.view.words.toleranceHint : ""
                    onValueModified: pane.act(function () { pane.panel.chooseTolerance(tolerance.value) })
                }

                Label {
                    text: pane.view ? pane.view.words.handOffset : ""
                    wrapMode: Text.WordWrap
                    Layout.fillWidth: true
                }
                SpinBox {
                    id: handOffset
                    objectName: "handOffset"
                    editable: true
                    implicitHeight: 32
                    stepSize: 5
                    from: pane.view ? pane.view.handOffsetRange.from : 0
                    to: pane.view ? pane.view.handOffsetRange.to : 0
                    value: pane.view ? pane.view.choice.handOffset : 0
                    Accessible.name: pane.view ? pane.view.words.handOffset : ""
                    Accessible.description: pane.view ? pane.view.words.handOffsetHint : ""
                    ToolTip.visible: hovered
                    ToolTip.delay: 600
                    ToolTip.text: pane.view ? pane.view.words.handOffsetHint : ""
                    onValueModified: pane.act(function () { pane.panel.chooseHandOffset(handOffset.value) })
                }
            }

            BellhandEtudeForm {
                id: etudeForm
                Layout.fillWidth: true
                view: pane.view
                onWanted: pane.act(function () { pane.panel.composeEtude(etudeForm.asked()) })
            }

            RowLayout {
                Layout.fillWidth: true
                Label {
                    Layout.fillWidth: true
                    font.bold: true
                    text: pane.view ? pane.view.words.findings + " (" + pane.view.findings.length + ")" : ""
                }
                Button {
                    objectName: "lookAgain"
                    visible: pane.view !== null && !pane.view.seesEveryEdit
                    implicitHeight: 26
                    flat: true
                    text: pane.view ? pane.view.words.lookAgain : ""
                    onClicked: pane.act(function () { pane.panel.lookAgain() })
                }
            }

            ListView {
                id: list
                objectName: "findings"
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.minimumHeight: 160
                clip: true
                spacing: 2
                activeFocusOnTab: true
                keyNavigationEnabled: true
                boundsBehavior: Flickable.StopAtBounds
                model: pane.view ? pane.view.findings : []
                ScrollBar.vertical: ScrollBar {}
                Keys.onReturnPressed: pane.act(function () { pane.panel.show(list.currentIndex) })
                Keys.onEnterPressed: pane.act(function () { pane.panel.show(list.currentIndex) })
                Keys.onSpacePressed: pane.act(function () { pane.panel.show(list.currentIndex) })

                Label {
                    visible: list.count === 0 && pane.view !== null && pane.view.isChecked
                    width: parent.width
                    wrapMode: Text.WordWrap
                    text: pane.view ? pane.view.words.nothingFound : ""
                }

                delegate: ItemDelegate {
                    width: list.width - 8
                    padding: 6
                    highlighted: list.activeFocus && ListView.isCurrentItem
                    onClicked: {
                        list.currentIndex = index
                        pane.act(function () { pane.panel.show(index) })
                    }
                    Accessible.name: modelData.place + ", " + modelData.written + ", " + modelData.label + ": " + modelData.message

                    contentItem: Column {
                        spacing: 2
                        Label {
                            width: parent.width
                            wrapMode: Text.WordWrap
                            textFormat: Text.PlainText
                            font.bold: true
                            text: modelData.place + "  " + modelData.written + "  " + modelData.label
                            color: modelData.severity === "impossible" ? pane.impossibleColour
                                : modelData.severity === "risky" ? pane.riskyColour : system.windowText
                        }
                        Label {
                            width: parent.width
                            wrapMode: Text.WordWrap
                            textFormat: Text.PlainText
                            text: modelData.message
                        }
                        Label {
                            width: parent.width
                            wrapMode: Text.WordWrap
                            textFormat: Text.PlainText
                            visible: modelData.remedy !== ""
                            text: (pane.view ? pane.view.words.instead : "") + " " + modelData.remedy
                        }
                    }
                }
            }
        }
    }
}
