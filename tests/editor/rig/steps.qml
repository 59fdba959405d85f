// Takes the steps of each task of tasks.json inside the editor and writes what they returned into its folder's results.json.
import QtQuick 2.9
import MuseScore 3.0
import FileIO 3.0
import "bellhand.js" as Script

MuseScore {
    id: root
    version: "1.0"
    description: "steps"

    FileIO { id: file }
    FileIO { id: clock }
    FileIO { id: own; source: Qt.resolvedUrl("tasks.json").toString().replace("file://", "") }

    readonly property bool isVersion4: root.mscoreVersion >= 40000

    // An object of the editor's with some of its members replaced; `real` is the object itself.
    function altered(object, replacements) {
        return new Proxy({}, {
            get: function (_, key) {
                if (key === "real") return object
                if (key in replacements) return replacements[key]
                var value = object[key]
                return typeof value === "function" ? function (a, b, c) { return object[key](a, b, c) } : value
            },
            set: function (_, key, value) { object[key] = value; return true }
        })
    }

    // The plugin's host with some members of its root item and of its cursors replaced.
    function alteredHost(members, cursorMembers) {
        var score = altered(curScore, { newCursor: function () {
            var cursor = curScore.newCursor()
            return altered(cursor, cursorMembers(cursor))
        } })
        members.curScore = score
        var written = members.written || []
        members.writeScore = function (asked, path, extension) {
            var real = asked.real || asked
            written.push(real.parts.length)
            return writeScore(real, path, extension)
        }
        var host = Script.Bellhand.hostOf(root, file, Qt)
        return { root: altered(root, members), file: host.file, engine: host.engine }
    }

    // The plugin's host, if asked for with a fault built in: the n-th text cannot be added.
    function hostFor(step) {
        if (step.failAfter === undefined)
            return Script.Bellhand.hostOf(root, file, Qt)
        var left = step.failAfter
        return alteredHost({}, function (cursor) {
            return { add: function (element) {
                var fails = left-- <= 0
                // Version 4 dies of an element that is made and not added.
                if (!fails || isVersion4) cursor.add(element)
                if (fails) throw new Error("no more texts")
            } }
        })
    }

    // The plugin's host, which counts the elements that are made and those that are added.
    function countingHost(counted) {
        function made(element) {
            counted.made += 1
            return altered(element, { clone: function () { return made(element.clone()) } })
        }
        return alteredHost({
            newElement: function (type) { return made(newElement(type)) },
            removeElement: function (element) { removeElement(element.real || element) }
        }, function (cursor) {
            return { add: function (element) { counted.added += 1; cursor.add(element.real) } }
        })
    }

    function nthNote(nth) {
        var cursor = curScore.newCursor()
        cursor.track = 0
        cursor.rewind(0)
        for (var i = 0; i < nth; i++) cursor.next()
        return cursor.element.notes[0]
    }

    function nthChord(nth) {
        var cursor = curScore.newCursor()
        cursor.track = 0
        cursor.rewind(0)
        for (var i = 0; ; cursor.next())
            if (cursor.element.type === Element.CHORD && i++ === nth) return cursor.element
    }

    // The panel, once it has read everything.
    function opened(step) { return read(Script.Bellhand.openPanel(hostFor(step))) }

    function read(panel) {
        for (; panel.view().isBusy; panel.tick()) if (!isTimed) pass(20)
        return panel
    }

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

    function trackOfSelection() {
        var elements = curScore.selection.elements
        return elements.length > 0 ? elements[0].track : -1
    }

    function wait(milliseconds) {
        var until = Date.now() + milliseconds
        while (Date.now() < until) {}
    }

    // The plugin's clock, which `steps.ts` gave its script: it goes on by a hair whenever it is read, and where a step lets
    // time go by, so that nothing hangs on how busy the machine is. Where time is what is measured it is the real one.
    property real now: 0
    property bool isTimed: false
    function pass(milliseconds) {
        if (isTimed) wait(milliseconds)
        else now += milliseconds
    }

    function setClock(steps) {
        now = Date.now()
        isTimed = steps.some(function (step) { return step.do === "measure" || step.do === "cost" })
        Script.clock.now = function () { return isTimed ? Date.now() : Math.floor(now += 0.02) }
    }

    function selected() {
        var elements = curScore.selection.elements
        var notes = []
        for (var i = 0; i < elements.length; i++)
            if (elements[i].type === Element.NOTE)
                notes.push({ pitch: elements[i].pitch, track: elements[i].track })
        return notes
    }

    // Adds an element at the n-th place. `fill` comes before it is added, `finish` after.
    function addAt(nth, type, fill, finish) {
        curScore.startCmd()
        var cursor = curScore.newCursor()
        cursor.track = 0
        cursor.rewind(0)
        for (var i = 0; i < nth; i++) cursor.next()
        var element = newElement(type)
        fill(element)
        cursor.add(element)
        if (finish) finish(element)
        curScore.endCmd()
    }

    function removed(element) {
        curScore.startCmd()
        removeElement(element)
        curScore.endCmd()
    }

    function firstWord() {
        for (var measure = curScore.firstMeasure; ; measure = measure.nextMeasure)
            for (var segment = measure.firstSegment; segment; segment = segment.nextInMeasure)
                if (segment.annotations.length > 0) return segment.annotations[0]
    }

    // The first thing of the score, which is no note.
    function selectClef() {
        if (isVersion4) curScore.selection.select(curScore.firstMeasure.firstSegment.elementAt(0))
        else { cmd("escape"); cmd("first-element") }
    }

    function selectNote(nth) { takes.select({ from: nth, length: 1 }) }

    // What a writer may do to a score; all leave the selection on a note or on nothing.
    readonly property var edits: ({
        "nothing": function () {},
        "raise a note": function () { curScore.startCmd(); nthChord(0).notes[0].pitch += 2; curScore.endCmd() },
        "write a word": function () { addAt(1, Element.STAFF_TEXT, function (text) { text.text = "gestopft" }) },
        "write a tempo": function () { addAt(0, Element.TEMPO_TEXT, function (text) { text.text = "Allegro" }, function (text) { text.tempo = 3 }) },
        "change the time": function () { addAt(0, Element.TIMESIG, function (sign) { sign.timesig = fraction(3, 4) }) },
        "delete a note": function () { selectNote(5); cmd("delete") },
        "tie two notes": function () { selectNote(1); cmd("tie"); selectNote(0) },
        "slur two notes": function () { takes.select({ from: 0, length: 2 }); cmd("add-slur"); cmd("escape"); selectNote(3) },
        "take a sign away": function () { removed(nthChord(0).articulations[0]) },
        "take a word away": function () { removed(firstWord()) },
        "take a glissando away": function () { removed(nthChord(3).notes[0].spannerForward[0]) },
        "undo": function () { cmd("undo") },
        // The editor selects what it takes back: where a writer moves on at once, no look sees a difference.
        "undo a slur": function () { cmd("undo"); cmd("escape"); selectNote(3) },
        "redo": function () { cmd("redo") }
    })

    readonly property var takes: ({
        "annotate": function (step) {
            if (step.choice) curScore.setMetaTag("bellhand", JSON.stringify(step.choice))
            return Script.Bellhand.runOnce(hostFor(step), "annotate")
        },
        "count": function () {
            var counted = { made: 0, added: 0 }
            Script.Bellhand.runOnce(countingHost(counted), "annotate")
            return counted
        },
        "clear": function (step) { return Script.Bellhand.runOnce(hostFor(step), "clear") },
        "undo": function () { cmd("undo") },
        "redo": function () { cmd("redo") },
        "select-all": function () { cmd("select-all") },
        "deselect": function () { cmd("escape") },
        "select": function (step) {
            if (isVersion4) {
                var chords = []
                for (var k = step.from; k < step.from + step.length; k++) chords.push(nthChord(k))
                var last = chords[chords.length - 1], end = last.parent.tick + last.actualDuration.ticks
                curScore.startCmd()
                if (step.length === 1) curScore.selection.select(last.notes[0])
                else curScore.selection.selectRange(chords[0].parent.tick, end, 0, 1)
                curScore.endCmd()
                return selected()
            }
            cmd("escape"); cmd("first-element"); cmd("next-chord")
            for (var i = 0; i < step.from; i++) cmd("next-chord")
            for (var j = 1; j < step.length; j++) cmd("select-next-chord")
            return selected()
        },
        "save": function (step, folder) {
            // The editor itself writes at the end of the run.
            if (isVersion4) return null
            var path = folder + "/" + step.as
            return writeScore(curScore, path, step.as.split(".").pop())
        },
        "result": function (step) { return JSON.parse(Script.Bellhand.resultNow(hostFor(step))) },
        "findings": function (step) { return opened(step).view() },
        // What the button says that annotates, in an editor of another language.
        "speak": function (step) {
            var engine = altered(Qt, { locale: function () { return { name: step.locale } } })
            var host = Script.Bellhand.hostOf(root, file, engine)
            return Script.Bellhand.openPanel(host).view().words.annotate
        },
        // Of how many parts the scores were that opening the panel wrote, what it found, how much is selected then.
        "written": function () {
            var written = []
            var view = read(Script.Bellhand.openPanel(alteredHost({ written: written }, function () { return {} }))).view()
            var findings = view.findings.map(function (row) { return row.place + ": " + row.what })
            return { written: written, counts: view.counts, seesEveryEdit: view.seesEveryEdit, findings: findings, selected: curScore.selection.elements.length }
        },
        // What the panel's button does; then the score that is open is the étude.
        "etude": function (step) {
            var panel = opened(step)
            panel.composeEtude(step.form)
            read(panel)
            var view = panel.view()
            return { sentence: view.sentence, etudePath: view.etudePath, findings: view.findings, name: curScore.scoreName }
        },
        // A horn is chosen in the panel, which stays open while another score is opened, and is closed again; what it counts each time.
        "switch": function (step) {
            var panel = opened(step), counts = [panel.view().counts]
            function look() { panel.tick(); counts.push(read(panel).view().counts) }
            panel.decide("horn", step.horn)
            look()
            var other = readScore(step.path)
            look()
            closeScore(other)
            look()
            return counts
        },
        "show": function (step) {
            var panel = opened(step)
            panel.choose(step.row)
            return { selected: selected(), sentence: panel.view().sentence }
        },
        // Opens the panel and presses its controls one after the other, with the editor's own commands in between.
        "panel": function (step) {
            var panel = opened(step)
            return step.acts.map(function (act) {
                if (act.cmd) {
                    var said = panel.view().sentence
                    cmd(act.cmd)
                    for (var i = 0; i < 8 && panel.view().sentence === said; i++) { pass(300); panel.tick() }
                }
                else if (act.select) { pass(700); takes.select(act.select); panel.tick() }
                else if (act.unseen) edits[act.unseen]()
                else if (act.looks) for (var look = 0; look < act.looks; look++) { pass(300); panel.tick() }
                else if (act.fix) panel.repair(panel.view().chosen.repairs.indexOf(act.fix))
                else panel[act.press](act.what)
                read(panel)
                var view = panel.view()
                return {
                    sentence: view.sentence,
                    findings: view.findings.map(function (row) { return row.place + ": " + row.what }),
                    count: view.findingCount,
                    chosen: view.chosen,
                    answer: view.answer,
                    selected: selected()
                }
            })
        },
        "colour": function (step) { curScore.startCmd(); nthNote(step.nth).color = step.colour; curScore.endCmd() },
        "text": function (step) {
            curScore.startCmd()
            var cursor = curScore.newCursor()
            cursor.track = 0
            cursor.rewind(0)
            for (var i = 0; i < step.nth; i++) cursor.next()
            var text = newElement(Element.STAFF_TEXT)
            text.text = step.text
            cursor.add(text)
            curScore.endCmd()
        },
        "stretch": function (step) {
            var measure = curScore.firstMeasure
            for (var i = 0; i < step.bar; i++) measure = measure.nextMeasure
            curScore.startCmd()
            measure.userStretch = step.to
            curScore.endCmd()
        },
        "command": function (step) { cmd(step.name) },
        // How long one thing takes, in milliseconds, again and again; what has to be undone in between is not counted.
        "measure": function (step, folder) {
            var host = hostFor(step), times = [], panel = null
            if (step.what === "tick" || step.what === "rare tick" || step.what === "read") {
                panel = read(Script.Bellhand.openPanel(host))
                panel.tick()
            }
            for (var i = 0; i < step.times; i++) {
                if (step.what === "rare tick") wait(750)
                var start = Date.now()
                if (step.what === "annotate") Script.Bellhand.runOnce(host, "annotate")
                else if (step.what === "export") writeScore(curScore, folder + "/measured.musicxml", "musicxml")
                else if (step.what === "read") { panel.lookAgain(); read(panel) }
                else panel.tick()
                times.push(Date.now() - start)
                if (step.what === "annotate" && i + 1 < step.times) Script.Bellhand.runOnce(host, "clear")
            }
            return times
        },
        // What one thing costs the thread that draws and takes keys, in milliseconds of the processor's time.
        "cost": function (step, folder) {
            var host = hostFor(step)
            if (step.what === "open") {
                var slices = [processorTime(function () { kept = Script.Bellhand.openPanel(host) })]
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
            if (step.what === "click") { selectClef(); return looks(6) }
            if (step.what === "rest" || step.what === "work") return looks(20)
            if (step.what === "annotate") {
                var annotating = processorTime(function () { kept.annotate() })
                marked = markedPlaces()
                return annotating
            }
            return processorTime(function () {
                if (step.what === "clear") kept.clear()
                else if (step.what === "undo") cmd("undo")
                else if (step.what === "text") addAt(0, Element.STAFF_TEXT, function (text) { text.text = "x" })
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
        // Selects a stretch of a staff, from its n-th bar with notes on; returns how many notes.
        "select-stretch": function (step) {
            var track = 4 * step.staff, chords = []
            for (var m = curScore.firstMeasure; m && chords.length < step.length; m = m.nextMeasure)
                for (var s = m.firstSegment; s; s = s.nextInMeasure) {
                    var element = s.elementAt(track)
                    if (element && element.type === Element.CHORD && chords.length < step.length) chords.push(element)
                }
            var first = chords[0], last = chords[chords.length - 1]
            if (isVersion4) {
                curScore.startCmd()
                curScore.selection.selectRange(first.parent.tick, last.parent.tick + last.actualDuration.ticks, step.staff, step.staff + 1)
                curScore.endCmd()
                return selected().length
            }
            cmd("escape"); cmd("first-element"); cmd("next-chord")
            for (var t = 0; t < 200 && trackOfSelection() !== track; t++) cmd("next-track")
            for (var n = 0; n < 3000 && !first.notes[0].selected; n++) cmd("next-chord")
            for (var k = 0; k < 3000 && !last.notes[0].selected; k++) cmd("select-next-chord")
            return selected().length
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
        },
        // Opens the panel, makes one edit after the other, and counts the looks until the list is new; -1 when it never is.
        "edits": function (step) {
            var panel = opened(step)
            return step.names.map(function (name) {
                // What an edit left to be looked at is no news of what comes after it.
                if (name === "nothing") for (var rest = 0; rest < 4; rest++) { pass(300); panel.tick() }
                edits[name]()
                for (var looks = 1; looks <= 8; looks++) { pass(300); if (panel.tick()) return looks }
                return -1
            })
        },
        // Opens the panel, gives it a command of the editor's to notice, and counts the looks until the list is new.
        "follow": function (step) {
            var panel = opened(step), ticks = 0
            for (var i = 0; i < 3; i++) { pass(300); if (panel.tick()) return -1 }
            cmd(step.name)
            while (ticks < 20) { pass(300); ticks += 1; if (panel.tick()) break }
            return { ticks: ticks, findings: panel.view().findings }
        }
    })

    // Takes the steps of one task in the score that is open.
    function take(task) {
        var answer = { results: [] }
        setClock(task.steps)
        try {
            for (var i = 0; i < task.steps.length; i++) {
                var returned = takes[task.steps[i].do](task.steps[i], task.folder)
                answer.results.push(returned === undefined ? null : returned)
            }
        } catch (error) {
            answer.error = error + " " + error.stack
        }
        write(task.folder + "/results.json", JSON.stringify(answer))
    }

    function write(path, text) {
        own.source = path
        own.write(text)
    }

    onRun: {
        var path = own.source, tasks = JSON.parse(own.read())
        if (isVersion4) {
            // It opens the scores itself and runs this anew in each: what is left to do is in the file.
            write(path, JSON.stringify(tasks.slice(1)))
            take(tasks[0])
            return
        }
        // Version 3 brackets a plugin of this kind in a step of its history: ours are to be the only ones.
        curScore.endCmd()
        tasks.forEach(function (task, i) {
            if (i > 0) readScore(task.input)
            take(task)
        })
    }
}
