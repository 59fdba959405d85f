// The panel itself: it draws what the script hands over and passes every click on. No logic lives here;
// it is long because it names every control of the window.
import QtQuick 2.9
import QtQuick.Window 2.2
import QtQuick.Controls 2.3
import QtQuick.Layouts 1.3

Pane {
    id: pane
    padding: 4

    property var panel: null
    property var view: null
    property string failure: ""

    function open(script, root, file) {
        try {
            panel = script.openPanel(script.hostOf(root, file, Qt))
            refresh()
            restoreSize(root)
            annotate.forceActiveFocus(Qt.TabFocusReason)
        } catch (error) {
            failure = "" + error
        }
    }

    // A window of its own keeps the size the user gives it; at the side of the score there is none to keep.
    property bool keepsSize: false
    // As text, which can be compared.
    readonly property string size: Math.round(width) + "x" + Math.round(height)
    property string keptSize: ""
    property string lastSize: ""

    function restoreSize(root) {
        var window = keepsSize ? pane.Window.window : null
        if (!window)
            return
        if (root.mscoreVersion >= 40000) {
            // Version 4 nails the window to the size of what is in it.
            window.minimumWidth = 280
            window.minimumHeight = 320
            window.maximumWidth = window.maximumHeight = 16777215
            root.width = Qt.binding(function () { return window.width })
            root.height = Qt.binding(function () { return window.height })
        }
        var kept = panel.windowSize()
        if (kept) {
            window.width = kept.width
            window.height = kept.height
        }
        keptSize = lastSize = size
    }

    // Waits until the user lets the window's edge go.
    function keepSize() {
        if (keepsSize && size === lastSize && size !== keptSize) {
            panel.keepWindowSize(pane.width, pane.height)
            keptSize = size
        }
        lastSize = size
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

    readonly property BellhandTheme theme: BellhandTheme {}
    background: Rectangle { color: pane.theme.ground }

    Timer {
        // While a big score is read in slices the editor breathes in between, and waits for nothing else.
        interval: pane.view && pane.view.isBusy ? 30 : 300
        repeat: true
        running: pane.panel !== null && pane.visible
        onTriggered: {
            // The editor keeps a closed panel alive, hidden, and tells it nothing.
            if (pane.Window.window && !pane.Window.window.visible)
                return
            pane.keepSize()
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
        contentHeight: Math.max(height, column.implicitHeight + 12)
        boundsBehavior: Flickable.StopAtBounds
        ScrollBar.vertical: ScrollBar {}

        ColumnLayout {
            id: column
            // Room for the ring around what has the focus.
            x: 6
            y: 6
            width: flick.width - 12
            height: flick.contentHeight - 12
            spacing: 6
            enabled: pane.view !== null

            GridLayout {
                columns: pane.width < 300 ? 1 : 2
                Layout.fillWidth: true
                BellhandComboBox {
                    id: horn
                    objectName: "horn"
                    Layout.fillWidth: true
                    model: pane.view ? pane.view.horns : []
                    currentIndex: pane.view ? pane.view.hornIndex : -1
                    Accessible.name: pane.view ? pane.view.words.horn : ""
                    onActivated: pane.act(function () { pane.panel.chooseHorn(horn.currentIndex) })
                }
                BellhandComboBox {
                    id: noteNames
                    objectName: "noteNames"
                    Layout.fillWidth: pane.width < 300
                    Layout.preferredWidth: 106
                    model: pane.view ? pane.view.noteNamings : []
                    currentIndex: pane.view ? pane.view.noteNamingIndex : -1
                    Accessible.name: pane.view ? pane.view.words.noteNames : ""
                    ToolTip.visible: hovered
                    ToolTip.delay: 600
                    ToolTip.text: pane.view ? pane.view.words.noteNames : ""
                    onActivated: pane.act(function () { pane.panel.chooseNoteNaming(noteNames.currentIndex) })
                }
            }

            GridLayout {
                columns: pane.width < 240 ? 1 : 2
                Layout.fillWidth: true
                BellhandButton {
                    id: annotate
                    objectName: "annotate"
                    Layout.fillWidth: true
                    Layout.preferredWidth: 1
                    text: pane.view ? pane.view.words.annotate : ""
                    isMain: true
                    onClicked: pane.act(function () { pane.panel.annotate() })
                }
                BellhandButton {
                    objectName: "clear"
                    Layout.fillWidth: true
                    Layout.preferredWidth: 1
                    text: pane.view ? pane.view.words.clear : ""
                    onClicked: pane.act(function () { pane.panel.clear() })
                }
            }

            BellhandText {
                objectName: "sentence"
                Layout.fillWidth: true
                text: pane.failure !== "" ? pane.failure : pane.view ? pane.view.sentence : ""
                visible: text !== ""
            }

            // Where version 4 leaves the étude to be opened by hand.
            RowLayout {
                visible: pane.view !== null && pane.view.etudePath !== ""
                Layout.fillWidth: true
                TextEdit {
                    id: etudePath
                    visible: false
                    text: pane.view ? pane.view.etudePath : ""
                }
                BellhandButton {
                    objectName: "copyPath"
                    Layout.fillWidth: true
                    implicitHeight: 30
                    text: pane.view ? pane.view.words.copyPath : ""
                    onClicked: {
                        etudePath.selectAll()
                        etudePath.copy()
                    }
                    Keys.onReturnPressed: clicked()
                    Keys.onEnterPressed: clicked()
                }
                BellhandButton {
                    objectName: "openOutside"
                    Layout.fillWidth: true
                    implicitHeight: 30
                    text: pane.view ? pane.view.words.openOutside : ""
                    onClicked: pane.act(function () { pane.panel.openEtudeOutside() })
                    Keys.onReturnPressed: clicked()
                    Keys.onEnterPressed: clicked()
                }
            }

            BellhandButton {
                id: options
                objectName: "options"
                property bool areOpen: pane.height > 560
                Layout.fillWidth: true
                isQuiet: true
                text: (areOpen ? "\u25be " : "\u25b8 ") + (pane.view ? pane.view.words.print : "")
                onClicked: areOpen = !areOpen
            }

            GridLayout {
                visible: options.areOpen
                columns: pane.width < 380 ? 1 : 2
                columnSpacing: 10
                rowSpacing: 0
                Layout.fillWidth: true

                Repeater {
                    model: ["fingered", "valves", "natural", "verdict", "colour", "onlyChanges"]
                    BellhandCheckBox {
                        id: box
                        objectName: "show-" + modelData
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

                BellhandText {
                    text: pane.view ? pane.view.words.tolerance : ""
                    Layout.fillWidth: true
                    Layout.preferredHeight: tolerance.implicitHeight
                    verticalAlignment: Text.AlignVCenter
                }
                BellhandSpinBox {
                    id: tolerance
                    objectName: "tolerance"
                    editable: true
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

                BellhandText {
                    text: pane.view ? pane.view.words.handOffset : ""
                    Layout.fillWidth: true
                    Layout.preferredHeight: handOffset.implicitHeight
                    verticalAlignment: Text.AlignVCenter
                }
                BellhandSpinBox {
                    id: handOffset
                    objectName: "handOffset"
                    editable: true
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
                BellhandText {
                    Layout.fillWidth: true
                    font.bold: true
                    text: pane.view ? pane.view.words.findings + " (" + pane.view.findings.length + ")" : ""
                }
                BellhandButton {
                    objectName: "lookAgain"
                    visible: pane.view !== null && !pane.view.seesEveryEdit
                    isQuiet: true
                    text: pane.view ? pane.view.words.lookAgain : ""
                    onClicked: pane.act(function () { pane.panel.lookAgain() })
                }
            }

            BellhandText {
                objectName: "counts"
                Layout.fillWidth: true
                text: pane.view ? pane.view.counts : ""
                visible: text !== ""
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
                Keys.onShortcutOverride: function (event) { event.accepted = pane.theme.isPanelKey(event.key) }
                Keys.onReturnPressed: pane.act(function () { pane.panel.show(list.currentIndex) })
                Keys.onEnterPressed: pane.act(function () { pane.panel.show(list.currentIndex) })
                Keys.onSpacePressed: pane.act(function () { pane.panel.show(list.currentIndex) })

                BellhandText {
                    visible: list.count === 0 && pane.view !== null && pane.view.isChecked
                    width: parent.width
                    text: pane.view ? pane.view.words.nothingFound : ""
                }

                delegate: BellhandFinding {
                    width: list.width
                    finding: modelData
                    instead: pane.view ? pane.view.words.instead : ""
                    isCurrent: list.activeFocus && ListView.isCurrentItem
                    onClicked: {
                        list.currentIndex = index
                        pane.act(function () { pane.panel.show(index) })
                    }
                }
            }
        }
    }
}
