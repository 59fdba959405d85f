// The panel itself: its window, its clock and its parts. It draws what the script hands over and passes every press on.
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
    // For where no window says it.
    property string title: ""

    function open(script, root, file) {
        try {
            panel = script.openPanel(script.hostOf(root, file, Qt))
            refresh()
            restoreSize(root)
            stayOnTop(root)
            actions.focusFirst()
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
        // Beside the music rather than on it.
        window.x = pane.Screen.virtualX + Math.max(0, pane.Screen.width - window.width - 24)
    }

    // In version 3 every command brings the score to the front, over a window that does not say that it stays.
    function stayOnTop(root) {
        var window = keepsSize ? pane.Window.window : null
        if (window && root.mscoreVersion < 40000)
            window.flags = window.flags | Qt.WindowStaysOnTopHint
        returnsFocus = window !== null && root.mscoreVersion < 40000
    }
    property bool returnsFocus: false

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
            // The score took the keyboard along with the command.
            if (returnsFocus)
                pane.Window.window.requestActivate()
        } catch (error) {
            failure = "" + error
        }
    }

    function word(name) { return view ? view.words[name] : "" }

    // Where little room is the list gets what there is: what is said elsewhere too, or can be scrolled, takes less.
    // Afterwards: what is hidden while the parts are given their places keeps its own, blank.
    property bool isShort: false
    function shorten() { isShort = keepsSize && height < 620 }
    onHeightChanged: Qt.callLater(shorten)

    Keys.onEscapePressed: function (event) {
        event.accepted = keepsSize
        if (keepsSize)
            pane.Window.window.close()
    }
    Keys.onPressed: function (event) {
        var by = event.key === Qt.Key_PageDown ? 1 : event.key === Qt.Key_PageUp ? -1 : 0
        if (by === 0)
            return
        event.accepted = true
        act(function () { panel.step(by) })
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
        contentHeight: column.height + 12
        boundsBehavior: Flickable.StopAtBounds
        ScrollBar.vertical: ScrollBar {}
        // Afterwards: lines break anew while the parts are given their widths.
        function fit() { column.height = Math.max(height - 12, column.implicitHeight) }
        onHeightChanged: fit()

        ColumnLayout {
            id: column
            // Room for the ring around what has the focus.
            x: 6
            y: 6
            width: flick.width - 12
            onImplicitHeightChanged: Qt.callLater(flick.fit)
            spacing: 6
            enabled: pane.view !== null

            BellhandText {
                objectName: "title"
                Layout.fillWidth: true
                visible: text !== ""
                text: pane.title
                font.bold: true
                font.pixelSize: Math.round(theme.fontPixels * 1.2)
            }
            BellhandPlayer {
                owner: pane
                Layout.fillWidth: true
            }
            BellhandActions {
                id: actions
                owner: pane
                Layout.fillWidth: true
            }
            RowLayout {
                Layout.fillWidth: true
                BellhandFold {
                    id: options
                    objectName: "options"
                    Layout.fillWidth: true
                    label: pane.word("print")
                }
                BellhandFold {
                    id: etude
                    objectName: "etude"
                    label: pane.word("etude")
                }
            }
            BellhandSettings {
                owner: pane
                visible: options.isOpen
                Layout.fillWidth: true
            }
            BellhandEtudeForm {
                owner: pane
                isOpen: etude.isOpen
                visible: isOpen || (pane.view !== null && pane.view.etudePath !== "")
                Layout.fillWidth: true
            }
            BellhandFindings {
                owner: pane
                Layout.fillWidth: true
                Layout.fillHeight: true
                Layout.minimumHeight: 200
            }
            BellhandAnswer {
                owner: pane
                Layout.fillWidth: true
            }
        }
    }
}
