// The panel in a window of its own.
import QtQuick 2.9
import MuseScore 3.0
import FileIO 3.0
import "bellhand.js" as Script

MuseScore {
    id: root
    menuPath: "Plugins.Bellhand.Bellhand"
    description: "Writes the fingering and the natural pitch over stopped horn notes, and says what the hand cannot do"
    version: "0.1.0"
    pluginType: "dialog"
    requiresScore: false
    //4.4 title: "Bellhand"
    //4.4 categoryCode: "composing-arranging-tools"
    //4.4 thumbnailName: "bellhand.png"
    implicitWidth: 420
    implicitHeight: 700
    width: 420
    height: 700

    FileIO { id: file }

    BellhandPanel {
        id: panel
        anchors.fill: parent
        keepsSize: true
    }

    onRun: panel.open(Script.Bellhand, root, file)
}
