// Loads every plugin against the stand-in, presses its buttons and prints what came of each task as one line of JSON.
import QtQuick 2.9
import QtQuick.Window 2.2
import FileIO 3.0
import "modules/host.js" as Host
import "bellhand/bellhand.js" as Script
import "task.js" as Task

Window {
    id: window
    width: 460
    height: 700
    visible: true
    property var plugin: null
    FileIO { id: file }

    function findNamed(item, name) {
        if (item.objectName === name) return item
        var children = item.children || []
        for (var i = 0; i < children.length; i++) {
            var found = findNamed(children[i], name)
            if (found) return found
        }
        return item.contentItem && item.contentItem !== item ? findNamed(item.contentItem, name) : null
    }

    function load(file) {
        var component = Qt.createComponent("bellhand/" + file)
        if (component.status !== Component.Ready) throw new Error(component.errorString())
        plugin = component.createObject(window.contentItem, { width: 460, height: 700 })
        // Version 3 brackets a plugin without a window in a step of the history.
        var isBracketed = Host.state.version < 40000 && plugin.pluginType === ""
        if (isBracketed) Host.startCmd()
        plugin.run()
        if (isBracketed && Host.state.step) Host.endCmd()
    }

    /** On a slow machine a panel reads even a small score in slices; the clock's ticks do not come in here. */
    function settle() {
        var drawn = plugin.children[0]
        while (drawn && drawn.view && drawn.view.isBusy) { drawn.panel.tick(); drawn.refresh() }
    }

    readonly property var takes: ({
        "open": function (step) { Host.open(step.version, step.music) },
        "load": function (step) { load(step.file); settle() },
        "press": function (step) { findNamed(plugin, step.name).clicked(); settle(); return findNamed(plugin, "sentence").text },
        "look": function () { return JSON.parse(JSON.stringify(plugin.children[0].view)) },
        "decide": function (step) { plugin.children[0].panel.decide(step.control, step.value); plugin.children[0].refresh() },
        "tick": function () { var isNew = plugin.children[0].panel.tick(); plugin.children[0].refresh(); return isNew },
        // A part that took a slow machine long is made anew once nobody seems to write.
        "news": function () {
            for (var until = Date.now() + 5000; Date.now() < until; ) if (takes.tick()) return true
            return false
        },
        "texts": function () { return JSON.parse(JSON.stringify(Host.state.music.texts)) },
        "colours": function () {
            var found = []
            Host.state.music.chords.forEach(function (chord) { chord.notes.forEach(function (note) { found.push(note.color ? "" + note.color : "") }) })
            return found
        },
        "tags": function () { return Host.state.music.tags },
        "music": function () { return JSON.parse(JSON.stringify(Host.state.music)) },
        "log": function () { return Host.state.log },
        "edit": function (step) { Host.state.music.chords[step.chord].notes[0].pitch = step.pitch },
        "select": function (step) { Host.state.selection = step.selection; Host.startCmd(); Host.endCmd() },
        "selection": function () { return JSON.parse(JSON.stringify(Host.state.selection)) },
        "fail": function (step) { Host.state.failAfter = step.after },
        "cmd": function (step) { Host.cmd(step.name) },
        "history": function () { return { done: Host.state.done.length, undone: Host.state.undone.length, open: Host.state.step !== null } },
        "result": function () { return JSON.parse(Script.Bellhand.resultNow(Script.Bellhand.hostOf(plugin, file, Qt))) },
    })

    Timer {
        interval: 50
        running: true
        onTriggered: {
            var answers = Task.tasks.map(function (steps) {
                var results = []
                try {
                    steps.forEach(function (step) {
                        var returned = takes[step.take](step)
                        results.push(returned === undefined ? null : returned)
                    })
                } catch (error) {
                    return { results: results, error: error + " " + error.stack }
                }
                return { results: results }
            })
            console.log("ANSWER " + JSON.stringify(answers))
            Qt.quit()
        }
    }
}
