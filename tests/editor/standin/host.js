// A stand-in for the editor's plugin interface, made from what is known of versions 3.5 and later: elements come in a new
// wrapper each time, lists have a length and nothing else, a selection lists what it holds only after a step has ended.
.pragma library

var state = { version: 0, files: {}, music: null, undone: [], done: [], step: null, selection: null, listed: [], log: [], failAfter: -1 };

function enumeration(names, first) {
    var result = {};
    names.forEach((name, i) => { result[name] = first + i; });
    return result;
}
var ELEMENT = enumeration(["NOTE", "CHORD", "REST", "ARTICULATION", "STAFF_TEXT", "SYSTEM_TEXT", "EXPRESSION", "TEMPO_TEXT", "DYNAMIC",
    "SLUR", "SLUR_SEGMENT", "GLISSANDO", "GLISSANDO_SEGMENT", "OTTAVA", "OTTAVA_SEGMENT", "TIE", "SEGMENT", "ACCIDENTAL"], 11);
var PLACEMENT = { ABOVE: 0, BELOW: 1 };
var NOTE_TYPE = enumeration(["NORMAL", "ACCIACCATURA", "APPOGGIATURA", "GRACE4", "GRACE16", "GRACE32", "GRACE8_AFTER", "GRACE16_AFTER", "GRACE32_AFTER"], 0);
var SYM_ID = enumeration(["noSym", "brassMuteClosed", "brassMuteHalfClosed", "brassMuteOpen", "articStaccatoAbove"], 900);

function open(version, music) {
    state = { version: version, files: {}, music: JSON.parse(JSON.stringify(music)), undone: [], done: [], step: null,
        selection: { range: null, picked: [] }, listed: [], log: [], failAfter: -1 };
    keyed();
}

// What a plugin's root item offers. From 4.0 on reading and writing scores are stubs.
var root = {
    Element: ELEMENT, Placement: PLACEMENT, NoteType: NOTE_TYPE, SymId: SYM_ID,
    get mscoreVersion() { return state.version; },
    get curScore() { return score(); },
    newElement: newElement,
    removeElement: removeElement,
    writeScore: function (score, path) { return state.version < 40000 && writeScore(score, path); },
    cmd: cmd
};

// The harness has no writer of scores; the music as data tells changes as well.
function writeScore(score, path) {
    state.files[path] = JSON.stringify(state.music);
    return true;
}

function has46() { return state.version >= 40600; }

// Chords by place, so that a segment finds its elements without a search.
var places = {};
function keyed() {
    places = {};
    if (!state.music) return;
    state.music.chords.concat(state.music.rests).forEach((element) => { places[element.tick + "/" + element.track] = element; });
}

function list(items) {
    var result = { length: items.length };
    items.forEach((item, i) => { result[i] = item; });
    return result;
}

function fraction(ticks) { return { ticks: ticks, numerator: ticks, denominator: 1920 }; }

function wrapper(data, members) {
    Object.defineProperty(members, "data", { value: data });
    members.is = (other) => other.data === data;
    if (!("color" in members)) Object.defineProperty(members, "color", {
        get: () => data.color || "#000000", set: (value) => { changed(); data.color = value; } });
    Object.defineProperty(members, "selected", { get: () => isSelected(data) });
    return members;
}

function changed() {
    if (!state.step) throw new Error("a change outside a step");
    state.step.changes += 1;
}

function note(data, chord) {
    var result = wrapper(data, {
        type: ELEMENT.NOTE, track: chord.track, pitch: data.pitch, tpc: data.tpc2, tpc1: data.tpc1, tpc2: data.tpc2, line: data.line,
        visible: true, accidental: null, dots: list([]), tieForward: data.tieForward ? { type: ELEMENT.TIE } : null,
        tieBack: data.tieBack ? { type: ELEMENT.TIE } : null });
    Object.defineProperty(result, "parent", { get: () => chordWrapper(chord) });
    if (has46()) result.spannerForward = list(data.glissando ? [glissando(data, chord)] : []);
    return result;
}

function glissando(data, chord) {
    var line = wrapper(data, { type: ELEMENT.GLISSANDO, track: chord.track, spannerTick: fraction(chord.tick), spannerTicks: fraction(0), spannerTrack2: chord.track });
    Object.defineProperty(line, "parent", { get: () => note(data, chord) });
    return line;
}

function articulation(name, chord) {
    var result = wrapper(chord, { type: ELEMENT.ARTICULATION, track: chord.track, symbol: SYM_ID[name] });
    Object.defineProperty(result, "parent", { get: () => chordWrapper(chord) });
    return result;
}

function chordWrapper(data) {
    var result = wrapper(data, { type: ELEMENT.CHORD, track: data.track, duration: fraction(data.ticks), noteType: NOTE_TYPE[data.noteType || "NORMAL"] });
    Object.defineProperty(result, "notes", { get: () => list(data.notes.map((n) => note(n, data))) });
    Object.defineProperty(result, "graceNotes", { get: () => list((data.graces || []).map(chordWrapper)) });
    Object.defineProperty(result, "parent", { get: () => data.main ? chordWrapper(places[data.tick + "/" + data.track]) : segment(data.tick) });
    if (has46()) Object.defineProperty(result, "articulations", {
        get: () => list((data.signs || []).map((name) => articulation(name, data))) });
    return result;
}

function text(data) {
    var result = wrapper(data, { type: ELEMENT[data.kind], track: data.track, tempo: data.tempo });
    ["text", "fontSize", "fontStyle", "placement", "offsetX", "offsetY"].forEach((name) => {
        Object.defineProperty(result, name, { get: () => data[name], set: (value) => {
            if (state.music.texts.indexOf(data) >= 0) changed();
            data[name] = value;
        } });
    });
    Object.defineProperty(result, "parent", { get: () => segment(data.tick) });
    result.clone = () => text(JSON.parse(JSON.stringify(data)));
    return result;
}

function ticksIn(measure) {
    var ticks = {};
    state.music.chords.concat(state.music.rests, state.music.texts).forEach((element) => {
        if (element.tick >= measure.tick && element.tick < measure.tick + measure.ticks) ticks[element.tick] = true;
    });
    return Object.keys(ticks).map(Number).sort((a, b) => a - b);
}

function segment(tick) {
    var result = { type: ELEMENT.SEGMENT, track: 0, tick: tick, parent: null, elementAt: (track) => {
        var data = places[tick + "/" + track];
        if (!data) return null;
        return data.notes ? chordWrapper(data) : wrapper(data, { type: ELEMENT.REST, track: track, parent: null });
    } };
    Object.defineProperty(result, "annotations", { get: () => list(state.music.texts.filter((t) => t.tick === tick).map(text)) });
    Object.defineProperty(result, "nextInMeasure", { get: () => {
        var measure = measureAt(tick), ticks = ticksIn(measure), next = ticks[ticks.indexOf(tick) + 1];
        return next === undefined ? null : segment(next); } });
    return result;
}

function measureAt(tick) {
    return state.music.measures.filter((m) => tick >= m.tick && tick < m.tick + m.ticks)[0];
}

function measureWrapper(i) {
    var data = state.music.measures[i];
    if (!data) return null;
    var result = { irregular: Boolean(data.irregular), noOffset: 0, timesigActual: { numerator: data.numerator, denominator: data.denominator, ticks: data.ticks } };
    Object.defineProperty(result, "firstSegment", { get: () => { var ticks = ticksIn(data); return ticks.length ? segment(ticks[0]) : null; } });
    Object.defineProperty(result, "nextMeasure", { get: () => measureWrapper(i + 1) });
    return result;
}

function end() {
    var last = state.music.measures[state.music.measures.length - 1];
    return last ? last.tick + last.ticks : 0;
}

function score() {
    if (!state.music) return null;
    var result = {
        scoreName: state.music.name, nmeasures: state.music.measures.length, ntracks: state.music.ntracks, parts: list(state.music.parts),
        metaTag: (tag) => state.music.tags[tag] || "",
        setMetaTag: (tag, value) => { state.music.tags[tag] = value; },
        newCursor: cursor, startCmd: startCmd, endCmd: endCmd };
    Object.defineProperty(result, "firstMeasure", { get: () => measureWrapper(0) });
    Object.defineProperty(result, "lastSegment", { get: () => end() ? { tick: end() } : null });
    Object.defineProperty(result, "selection", { get: selection });
    return result;
}

function cursor() {
    var position = -1, ticks = [];
    function find() { return ticks[position]; }
    var result = { track: 0,
        rewind: (to) => {
            ticks = [];
            if (to !== 0) { position = state.selection.range ? 0 : -1; if (position === 0) ticks = [state.selection.range.from]; return; }
            var track = result.track;
            ticks = state.music.chords.concat(state.music.rests).filter((e) => e.track === track)
                .map((e) => e.tick).sort((a, b) => a - b);
            position = 0;
        },
        next: () => { position += 1; return position < ticks.length; },
        add: (element) => {
            if (state.failAfter >= 0 && state.failAfter-- === 0) throw new Error("no more elements");
            changed();
            element.data.tick = find();
            element.data.track = result.track;
            state.music.texts.push(element.data);
        } };
    Object.defineProperty(result, "element", { get: () => result.segment ? result.segment.elementAt(result.track) : null });
    Object.defineProperty(result, "segment", { get: () => find() === undefined ? null : segment(find()) });
    Object.defineProperty(result, "tick", { get: () => find() === undefined ? end() : find() });
    return result;
}

function newElement(type) {
    return text({ kind: Object.keys(ELEMENT).filter((name) => ELEMENT[name] === type)[0], text: "", fontSize: 10, fontStyle: 0, placement: 0, offsetX: 0, offsetY: -1 });
}

function removeElement(element) {
    changed();
    state.music.texts.splice(state.music.texts.indexOf(element.data), 1);
}

function startCmd() {
    if (state.step) throw new Error("a step within a step");
    state.step = { before: JSON.stringify(state.music), changes: 0 };
}

function endCmd(rollback) {
    if (!state.step) throw new Error("no step to end");
    var step = state.step;
    state.step = null;
    if (rollback && state.version >= 40000) restore(step.before);
    else if (step.changes > 0) { state.done.push(step.before); state.undone = []; }
    state.listed = selectedElements();
}

function restore(text) {
    var tags = state.music.tags;
    state.music = JSON.parse(text);
    state.music.tags = tags;
    keyed();
}

function cmd(name) {
    state.log.push(name);
    if (name === "undo" && state.done.length) { state.undone.push(JSON.stringify(state.music)); restore(state.done.pop()); }
    if (name === "redo" && state.undone.length) { state.done.push(JSON.stringify(state.music)); restore(state.undone.pop()); }
}

// Notes are picked by where they stand, since restoring makes new ones.
function keyOf(data) {
    for (var i = 0; i < state.music.chords.length; i++) {
        var chord = state.music.chords[i];
        for (var j = 0; j < chord.notes.length; j++) if (chord.notes[j] === data) return chord.tick + "/" + chord.track + "/" + j;
    }
    return "";
}

function isSelected(data) {
    var range = state.selection.range, key = keyOf(data);
    if (key === "") return false;
    var tick = Number(key.split("/")[0]), staff = Math.floor(Number(key.split("/")[1]) / 4);
    if (range) return tick >= range.from && tick < range.to && staff >= range.staff && staff < range.staffEnd;
    return state.selection.picked.indexOf(key) >= 0;
}

function selectedElements() {
    var found = [];
    if (!state.music) return found;
    state.music.chords.forEach((chord) => {
        chord.notes.forEach((data) => {
            if (!isSelected(data)) return;
            found.push(() => note(data, chord));
            if (data.glissando && state.selection.range) found.push(() => has46() ? { type: ELEMENT.GLISSANDO_SEGMENT, track: chord.track, spanner: glissando(data, chord) } : glissando(data, chord));
        });
        // The sign of a grace chord is not listed.
        if (state.selection.range && isSelected(chord.notes[0])) (chord.signs || []).forEach((name) => {
            found.push(() => articulation(name, chord)); });
    });
    if (state.selection.range) ["slurs", "octaveLines"].forEach((kind) => {
        state.music[kind].forEach((data) => {
            var line = { type: kind === "slurs" ? ELEMENT.SLUR : ELEMENT.OTTAVA, track: data.track, parent: null, ottavaType: data.ottavaType,
                spannerTick: fraction(data.tick), spannerTicks: fraction(data.ticks), spannerTrack2: data.track2 };
            found.push(() => has46() ? { type: kind === "slurs" ? ELEMENT.SLUR_SEGMENT : ELEMENT.OTTAVA_SEGMENT, track: data.track, parent: null, spanner: line } : line);
        });
    });
    return found;
}

function selection() {
    return {
        get elements() { return list(state.listed.map((make) => make())); },
        get isRange() { return state.selection.range !== null; },
        get startSegment() { return state.selection.range ? { tick: state.selection.range.from } : null; },
        get endSegment() { var range = state.selection.range; return range && range.to < end() ? { tick: range.to } : null; },
        get startStaff() { return state.selection.range ? state.selection.range.staff : 0; },
        get endStaff() { return state.selection.range ? state.selection.range.staffEnd : 0; },
        clear: () => { state.selection = { range: null, picked: [] }; return true; },
        select: (element, add) => {
            var picked = add ? state.selection.picked : [];
            state.selection = { range: null, picked: picked.concat(keyOf(element.data)) };
            state.listed = selectedElements();
            return true;
        },
        selectRange: (from, to, staff, staffEnd) => {
            state.selection = { range: { from: from, to: to, staff: staff, staffEnd: staffEnd }, picked: [] };
            return true;
        }
    };
}
