// Stands in for the editor's file object: files are kept in memory.
import QtQuick 2.9
import "../host.js" as Host

QtObject {
    property string source: ""
    function read() { return source in Host.state.files ? Host.state.files[source] + "\n" : "" }
    function write(text) { Host.state.files[source] = text; return true }
    function exists() { return source in Host.state.files }
    function remove() { return delete Host.state.files[source] }
    function tempPath() { return "/tmp" }
    function homePath() { return "/home" }
}
