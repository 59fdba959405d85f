// The panel at the side of the score: version 3 only, the others have no docks. They list every file that holds
// their name, whatever is in it: here its first letter is written as an escape.
import QtQuick 2.9
import \u004duseScore 3.0
import FileIO 3.0
import "bellhand.js" as Script

\u004duseScore {
    id: root
    menuPath: "Plugins.Bellhand.Bellhand at the side"
    description: "Writes the fingering and the natural pitch over stopped horn notes, and says what the hand cannot do"
    version: "0.1.0"
    pluginType: "dock"
    dockArea: "right"
    requiresScore: false
    implicitWidth: 300
    implicitHeight: 640

    FileIO { id: file }

    BellhandPanel {
        id: panel
        anchors.fill: parent
        // The editor calls every such side "Plugin".
        title: "Bellhand"
    }

    onRun: panel.open(Script.Bellhand, root, file)
}
