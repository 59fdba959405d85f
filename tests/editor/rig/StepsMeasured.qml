// The steps that measure how long something takes. What is not declared here, `steps.qml` declares.
import QtQuick 2.9
import FileIO 3.0

Item {
    FileIO { id: clock }

    property var kept: null

    // The processor's time of the thread that this runs in, in milliseconds.
    function processorTime(work) {
        function now() { clock.source = "/proc/self/schedstat"; return Number(clock.read().split(" ")[0]) / 1e6 }
        var start = now()
        work()
        return Math.round(10 * (now() - start)) / 10
    }

    // Where the last annotating left marks, track by track.
    property var marked: []

    function markedPlaces() {
        var places = []
        for (var measure = curScore.firstMeasure; measure; measure = measure.nextMeasure)
            for (var segment = measure.firstSegment; segment; segment = segment.nextInMeasure)
                for (var i = 0; i < segment.annotations.length; i++) {
                    var text = segment.annotations[i]
                    if (text.type === Element.STAFF_TEXT && text.text.indexOf("\u2060\u2063\u200b\u2063\u2060") >= 0) places.push({ track: text.track, tick: segment.tick })
                }
        return places.sort(function (a, b) { return a.track - b.track || a.tick - b.tick })
    }

    function wait(milliseconds) {
        var until = Date.now() + milliseconds
        while (Date.now() < until) {}
    }

    readonly property var takes: ({
        // How long one thing takes, in milliseconds, again and again; what has to be undone in between is not counted.
        "measure": function (step, folder) {
            var host = hosts.hostFor(step), times = [], panel = null
            if (step.what === "tick" || step.what === "rare tick" || step.what === "read") {
                panel = read(bellhand.openPanel(host))
                panel.tick()
            }
            for (var i = 0; i < step.times; i++) {
                if (step.what === "rare tick") wait(750)
                var start = Date.now()
                if (step.what === "annotate") bellhand.runOnce(host, "annotate")
                else if (step.what === "export") writeScore(curScore, folder + "/measured.musicxml", "musicxml")
                else if (step.what === "read") { panel.lookAgain(); read(panel) }
                else panel.tick()
                times.push(Date.now() - start)
                if (step.what === "annotate" && i + 1 < step.times) bellhand.runOnce(host, "clear")
            }
            return times
        },
        // What one thing costs the thread that draws and takes keys, in milliseconds of the processor's time.
        "cost": function (step, folder) {
            var host = hosts.hostFor(step)
            if (step.what === "open") {
                // The panel before it is closed.
                kept = null
                var slices = [processorTime(function () { kept = bellhand.openPanel(host) })]
                while (kept.view().isBusy) slices.push(processorTime(function () { kept.tick() }))
                return slices
            }
            function looks(count) {
                var costs = []
                for (var i = 0; i < count; i++) { wait(300); costs.push(processorTime(function () { kept.tick() })) }
                return costs
            }
            // After eight seconds without a move nobody counts as working any more.
            if (step.what === "rest") wait(8500)
            if (step.what === "click") { writer.selectClef(); return looks(6) }
            if (step.what === "rest" || step.what === "work") return looks(20)
            if (step.what === "annotate") {
                var annotating = processorTime(function () { kept.annotate() })
                marked = markedPlaces()
                return annotating
            }
            return processorTime(function () {
                if (step.what === "clear") kept.clear()
                else if (step.what === "undo") cmd("undo")
                else if (step.what === "text") writer.addAt(0, Element.STAFF_TEXT, function (text) { text.text = "x" })
                else writeScore(curScore, folder + "/cost.mscx", "mscx")
            })
        },
        // As many plain texts as annotating wrote marks, at the same places, and their removal: what the editor takes for itself.
        "plain": function () {
            var texts = []
            var add = processorTime(function () {
                curScore.startCmd()
                var cursor = curScore.newCursor()
                marked.forEach(function (place, i) {
                    if (i === 0 || cursor.track !== place.track) { cursor.track = place.track; cursor.rewind(0) }
                    while (cursor.tick < place.tick) cursor.next()
                    var text = newElement(Element.STAFF_TEXT)
                    text.text = "x"
                    cursor.add(text)
                    texts.push(text)
                })
                curScore.endCmd()
            })
            var remove = processorTime(function () {
                curScore.startCmd()
                texts.forEach(function (text) { removeElement(text) })
                curScore.endCmd()
            })
            return { texts: texts.length, add: add, remove: remove }
        },
        "load": function (step) {
            var path = Qt.resolvedUrl("bellhand.js").toString().replace("file://", ""), times = []
            file.source = path
            var text = step.what === "script" ? file.read() : "var Bellhand = {}"
            for (var i = 0; i < step.times; i++) {
                file.source = path.replace(".js", step.what + i + ".js")
                file.write(text)
                var start = Date.now()
                Qt.createQmlObject('import QtQuick 2.9; import "bellhand' + step.what + i + '.js" as Script; '
                    + 'QtObject { property var panel: Script.Bellhand.openPanel }', root, Qt.resolvedUrl("load.qml"))
                times.push(Date.now() - start)
                file.remove()
            }
            return times
        }
    })
}
