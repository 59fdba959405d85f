// The list of what was found. It keeps its place while it is made anew, and what is pressed stays under the pointer.
import QtQuick 2.9
import QtQuick.Controls 2.3
import QtQuick.Layouts 1.3

ColumnLayout {
    id: findings
    // The panel that it is a part of.
    property var owner: null
    readonly property var view: owner ? owner.view : null
    function word(name) { return view ? view.words[name] : "" }
    spacing: 4

    RowLayout {
        Layout.fillWidth: true
        spacing: 2
        BellhandText {
            Layout.fillWidth: true
            font.bold: true
            text: findings.view ? findings.view.words.findings + " (" + findings.view.findingCount + ")" : ""
        }
        Repeater {
            model: [{ by: -1, text: "\u2039", hint: "previous", key: "PgUp" }, { by: 1, text: "\u203a", hint: "next", key: "PgDn" }]
            BellhandButton {
                objectName: modelData.hint
                isQuiet: true
                enabled: list.count > 0
                Layout.preferredWidth: implicitHeight * 1.2
                font.pixelSize: Math.round(theme.fontPixels * 1.5)
                font.bold: true
                text: modelData.text
                Accessible.name: findings.word(modelData.hint)
                ToolTip.visible: hovered
                ToolTip.delay: 600
                ToolTip.text: findings.word(modelData.hint) + " (" + modelData.key + ")"
                onClicked: findings.owner.act(function () { findings.owner.panel.step(modelData.by) })
            }
        }
    }
    RowLayout {
        Layout.fillWidth: true
        BellhandCheckBox {
            id: fromCursor
            objectName: "fromCursor"
            Layout.fillWidth: true
            text: findings.word("fromCursor")
            checked: findings.view !== null && findings.view.startsAtCursor
            onClicked: findings.owner.act(function () { findings.owner.panel.chooseStart(fromCursor.checked) })
        }
        BellhandButton {
            objectName: "lookAgain"
            opacity: findings.view !== null && !findings.view.seesEveryEdit ? 1 : 0
            enabled: opacity > 0
            isQuiet: true
            text: findings.word("lookAgain")
            onClicked: findings.owner.act(function () { findings.owner.panel.lookAgain() })
        }
    }
    BellhandText {
        objectName: "counts"
        Layout.fillWidth: true
        visible: !findings.owner || !findings.owner.isShort
        text: findings.view ? findings.view.counts : ""
    }

    ListView {
        id: list
        objectName: "findings"
        // As text, since the script hands over new objects with every look.
        property string drawn: "[]"
        property var seen: null
        property BellhandTheme theme: BellhandTheme {}
        readonly property int chosenRow: findings.view ? findings.view.chosen.row : -1

        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.minimumHeight: 120
        clip: true
        spacing: 2
        activeFocusOnTab: true
        boundsBehavior: Flickable.StopAtBounds
        cacheBuffer: 2000
        ScrollBar.vertical: ScrollBar {}
        Keys.onShortcutOverride: function (event) { event.accepted = theme.isPanelKey(event.key) }
        Keys.onDownPressed: findings.owner.act(function () { findings.owner.panel.step(1) })
        Keys.onUpPressed: findings.owner.act(function () { findings.owner.panel.step(-1) })
        Keys.onReturnPressed: findings.owner.act(function () { findings.owner.panel.choose(list.chosenRow) })
        Keys.onEnterPressed: findings.owner.act(function () { findings.owner.panel.choose(list.chosenRow) })
        Keys.onSpacePressed: findings.owner.act(function () { findings.owner.panel.choose(list.chosenRow) })

        BellhandText {
            visible: list.count === 0 && findings.view !== null && findings.view.isChecked
            width: parent.width
            text: findings.word("nothingFound")
        }

        // Rows that are still there stay where they are; else the list stays at its height.
        function redraw() {
            var rows = findings.view.findings
            if (rows === seen)
                return
            seen = rows
            var now = JSON.stringify(rows)
            if (now === drawn)
                return
            drawn = now
            var top = indexAt(1, contentY + 1)
            var item = top < 0 ? null : itemAt(1, contentY + 1)
            var offset = item ? contentY - item.y : 0
            var key = top < 0 ? "" : model[top].key
            model = rows
            forceLayout()
            for (var at = 0; at < rows.length; at++)
                if (rows[at].key === key)
                    break
            if (at === rows.length)
                at = Math.min(top, rows.length - 1)
            if (at <= 0 && offset === 0) {
                positionViewAtBeginning()
                return
            }
            positionViewAtIndex(at, ListView.Beginning)
            contentY = Math.max(originY, Math.min(contentY + offset, originY + contentHeight - height))
        }

        // The row that was pressed, and how far below the list's top it stood.
        property int held: -1
        property real heldAt: 0
        function hold(index, y) {
            held = index
            heldAt = y - contentY
        }
        onChosenRowChanged: {
            if (held !== chosenRow)
                held = -1
            Qt.callLater(showChosen)
        }
        function showChosen() {
            if (chosenRow < 0 || chosenRow >= count)
                return
            forceLayout()
            var item = held === chosenRow ? findItem(chosenRow) : null
            if (item)
                contentY = Math.max(originY, Math.min(item.y - heldAt, originY + contentHeight - height))
            positionViewAtIndex(chosenRow, ListView.Contain)
        }
        function findItem(index) {
            for (var i = 0; i < contentItem.children.length; i++)
                if (contentItem.children[i].row === index)
                    return contentItem.children[i]
            return null
        }

        delegate: BellhandFinding {
            readonly property int row: index
            width: list.width
            owner: findings.owner
            finding: modelData
            isChosen: index === list.chosenRow
            hasKeys: list.activeFocus
            // It has grown by what it tells once it is chosen.
            onHeightChanged: if (isChosen) Qt.callLater(list.showChosen)
            onClicked: {
                list.hold(index, y)
                list.forceActiveFocus(Qt.MouseFocusReason)
                findings.owner.act(function () { findings.owner.panel.choose(index) })
            }
        }
    }

    onViewChanged: if (view) list.redraw()
}
