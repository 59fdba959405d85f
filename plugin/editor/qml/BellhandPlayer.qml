// Who plays, and how notes are named.
import QtQuick 2.9
import QtQuick.Controls 2.3
import QtQuick.Layouts 1.3

GridLayout {
    id: player
    // The panel that it is a part of.
    property var owner: null
    readonly property var view: owner ? owner.view : null
    function word(name) { return view ? view.words[name] : "" }
    columns: width < 300 ? 1 : 2

    BellhandComboBox {
        id: horn
        objectName: "horn"
        Layout.fillWidth: true
        model: player.view ? player.view.horns : []
        currentIndex: player.view ? player.view.hornIndex : -1
        Accessible.name: player.word("horn")
        onActivated: player.owner.act(function () { player.owner.panel.decide("horn", horn.currentIndex) })
    }
    BellhandComboBox {
        id: noteNames
        objectName: "noteNames"
        Layout.fillWidth: player.width < 300
        Layout.preferredWidth: 106
        model: player.view ? player.view.noteNamings : []
        currentIndex: player.view ? player.view.noteNamingIndex : -1
        Accessible.name: player.word("noteNames")
        ToolTip.visible: hovered
        ToolTip.delay: 600
        ToolTip.text: player.word("noteNames")
        onActivated: player.owner.act(function () { player.owner.panel.decide("noteNaming", noteNames.currentIndex) })
    }
}
