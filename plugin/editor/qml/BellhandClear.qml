// Clears without a window, so that a shortcut can be given to it.
import QtQuick 2.9
import MuseScore 3.0
import FileIO 3.0
import "bellhand.js" as Script

MuseScore {
    id: root
    menuPath: "Plugins.Bellhand.Clear"
    description: "Takes the annotations and their colours off the selection, or off the whole score"
    version: "0.1.0"
    requiresScore: false
    //4.4 title: "Bellhand: clear"
    //4.4 categoryCode: "composing-arranging-tools"
    //4.4 thumbnailName: "bellhand.png"

    FileIO { id: file }

    onRun: {
        Script.Bellhand.runOnce(Script.Bellhand.hostOf(root, file, Qt), "clear")
        // As part of an extension package this is opened in a window, which has nothing to show.
        if (root.mscoreVersion >= 40400)
            root.quit()
    }
}
