// Annotates without a window, so that a shortcut can be given to it.
import QtQuick 2.9
import MuseScore 3.0
import FileIO 3.0
import "bellhand.js" as Script

MuseScore {
    id: root
    menuPath: "Plugins.Bellhand.Annotate"
    description: "Annotates the stopped notes of the selection, or of the whole score"
    version: "0.1.0"
    requiresScore: false
    //4.4 title: "Bellhand: annotate"
    //4.4 categoryCode: "composing-arranging-tools"
    //4.4 thumbnailName: "bellhand.png"

    FileIO { id: file }

    onRun: {
        Script.Bellhand.runOnce(Script.Bellhand.hostOf(root, file, Qt), "annotate")
        // As part of an extension package this is opened in a window, which has nothing to show.
        if (root.mscoreVersion >= 40400)
            root.quit()
    }
}
