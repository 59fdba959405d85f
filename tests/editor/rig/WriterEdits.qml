// What a writer does to a score. What is not declared here, `steps.qml` declares.
import QtQuick 2.9

Item {
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
}
