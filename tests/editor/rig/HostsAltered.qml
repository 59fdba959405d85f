// The plugin's host as it is, with a fault built in, or counting. What is not declared here, `steps.qml` declares.
import QtQuick 2.9

Item {
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
        var host = bellhand.hostOf(root, file, Qt)
        return { root: altered(root, members), file: host.file, engine: host.engine }
    }

    // The plugin's host, if asked for with a fault built in: the n-th text cannot be added.
    function hostFor(step) {
        if (step.failAfter === undefined)
            return bellhand.hostOf(root, file, Qt)
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
}
