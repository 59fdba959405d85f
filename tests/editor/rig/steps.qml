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
    FileIO { id: own; source: Qt.resolvedUrl("tasks.json").toString().replace("file://", "") }

    readonly property bool isVersion4: root.mscoreVersion >= 40000
    // A file that takes the script in itself has another one, with another clock.
    readonly property var bellhand: Script.Bellhand

    HostsAltered { id: hosts }
    WriterEdits { id: writer }
    StepsMeasured { id: measured }

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
    function opened(step) { return read(bellhand.openPanel(hosts.hostFor(step))) }

    function read(panel) {
        for (; panel.view().isBusy; panel.tick()) if (!isTimed) pass(20)
        return panel
    }

    function trackOfSelection() {
        var elements = curScore.selection.elements
        return elements.length > 0 ? elements[0].track : -1
    }

    // The plugin's clock, which `steps.ts` gave its script: it goes on by a hair whenever it is read, and where a step lets
    // time go by, so that nothing hangs on how busy the machine is. Where time is what is measured it is the real one.
    property real now: 0
    property bool isTimed: false
    function pass(milliseconds) {
        if (isTimed) measured.wait(milliseconds)
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

    readonly property var takes: ({
        "annotate": function (step) {
            if (step.choice) curScore.setMetaTag("bellhand", JSON.stringify(step.choice))
            return bellhand.runOnce(hosts.hostFor(step), "annotate")
        },
        "count": function () {
            var counted = { made: 0, added: 0 }
            bellhand.runOnce(hosts.countingHost(counted), "annotate")
            return counted
        },
        "clear": function (step) { return bellhand.runOnce(hosts.hostFor(step), "clear") },
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
        "result": function (step) { return JSON.parse(bellhand.resultNow(hosts.hostFor(step))) },
        "findings": function (step) { return opened(step).view() },
        // What the button says that annotates, in an editor of another language.
        "speak": function (step) {
            var engine = hosts.altered(Qt, { locale: function () { return { name: step.locale } } })
            var host = bellhand.hostOf(root, file, engine)
            return bellhand.openPanel(host).view().words.annotate
        },
        // Of how many parts the scores were that opening the panel wrote, what it found, how much is selected then.
        "written": function () {
            var written = []
            var view = read(bellhand.openPanel(hosts.alteredHost({ written: written }, function () { return {} }))).view()
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
                else if (act.unseen) writer.edits[act.unseen]()
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
        // Opens the panel, makes one edit after the other, and counts the looks until the list is new; -1 when it never is.
        "edits": function (step) {
            var panel = opened(step)
            return step.names.map(function (name) {
                // What an edit left to be looked at is no news of what comes after it.
                if (name === "nothing") for (var rest = 0; rest < 4; rest++) { pass(300); panel.tick() }
                writer.edits[name]()
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
                var step = task.steps[i], returned = (takes[step.do] || measured.takes[step.do])(step, task.folder)
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
