// Stands in for the root item that the editor gives its plugins. QML cannot declare members with capitals, as Element is:
// the script asks `facade` for them.
import QtQuick 2.9
import "../host.js" as Host

Item {
    property string menuPath
    property string description
    property string version
    property string pluginType
    property string dockArea
    property bool requiresScore: true
    signal run()

    function facade() { return Host.root }
}
