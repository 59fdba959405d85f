// Composes an étude: it gathers what is asked for, hands it over, and says where the étude lies.
import QtQuick 2.9
import QtQuick.Layouts 1.3

ColumnLayout {
    id: form
    spacing: 6

    // The panel that it is a part of.
    property var owner: null
    readonly property var view: owner ? owner.view : null
    function word(name) { return view ? view.words[name] : "" }

    function asked() {
        return {
            kindIndex: etudeKind.currentIndex,
            keyIndex: etudeKey.currentIndex,
            level: etudeLevel.value,
            bars: etudeBars.value,
            tempo: etudeTempo.value,
            range: etudeRange.text
        }
    }

    property bool isOpen: false

    GridLayout {
        visible: form.isOpen
        columns: form.width < 300 ? 1 : 2
        columnSpacing: 10
        rowSpacing: 4
        Layout.fillWidth: true

        BellhandText { text: form.view ? form.view.words.etudeKind : "" }
        BellhandComboBox {
            id: etudeKind
            objectName: "etudeKind"
            Layout.fillWidth: true
            Layout.preferredWidth: 190
            model: form.view ? form.view.etudeKinds : []
            Accessible.name: form.view ? form.view.words.etudeKind : ""
        }
        BellhandText { text: form.view ? form.view.words.etudeKey : "" }
        BellhandComboBox {
            id: etudeKey
            objectName: "etudeKey"
            Layout.fillWidth: true
            Layout.preferredWidth: 190
            model: form.view ? form.view.etudeKeys : []
            Accessible.name: form.view ? form.view.words.etudeKey : ""
        }
        BellhandText { text: form.view ? form.view.words.etudeLevel : "" }
        BellhandSpinBox {
            id: etudeLevel
            objectName: "etudeLevel"
            from: 1
            to: 3
            value: 1
            Accessible.name: form.view ? form.view.words.etudeLevel : ""
        }
        BellhandText { text: form.view ? form.view.words.etudeLength : "" }
        BellhandSpinBox {
            id: etudeBars
            objectName: "etudeBars"
            from: form.view ? form.view.etudeBars.from : 4
            to: form.view ? form.view.etudeBars.to : 64
            stepSize: form.view ? form.view.etudeBars.step : 4
            value: 32
            Accessible.name: form.view ? form.view.words.etudeLength : ""
        }
        BellhandText {
            text: form.view ? form.view.words.etudeTempo : ""
            Layout.fillWidth: true
        }
        BellhandSpinBox {
            id: etudeTempo
            objectName: "etudeTempo"
            editable: true
            from: 0
            to: 132
            stepSize: 4
            value: 0
            Accessible.name: form.view ? form.view.words.etudeTempo : ""
        }
        BellhandText {
            text: form.view ? form.view.words.etudeCompass : ""
            Layout.fillWidth: true
        }
        BellhandTextField {
            id: etudeRange
            objectName: "etudeRange"
            Layout.preferredWidth: 130
            Accessible.name: form.view ? form.view.words.etudeCompass : ""
        }
        BellhandButton {
            objectName: "compose"
            Layout.fillWidth: true
            Layout.columnSpan: form.width < 300 ? 1 : 2
            text: form.view ? form.view.words.compose : ""
            onClicked: form.owner.act(function () { form.owner.panel.composeEtude(form.asked()) })
        }
    }

    // Where version 4 leaves the étude to be opened by hand.
    RowLayout {
        visible: form.view !== null && form.view.etudePath !== ""
        Layout.fillWidth: true
        TextEdit {
            id: etudePath
            visible: false
            text: form.view ? form.view.etudePath : ""
        }
        BellhandButton {
            objectName: "copyPath"
            Layout.fillWidth: true
            implicitHeight: 30
            text: form.word("copyPath")
            onClicked: {
                etudePath.selectAll()
                etudePath.copy()
            }
            Keys.onReturnPressed: clicked()
            Keys.onEnterPressed: clicked()
        }
        BellhandButton {
            objectName: "openOutside"
            Layout.fillWidth: true
            implicitHeight: 30
            text: form.word("openOutside")
            onClicked: form.owner.act(function () { form.owner.panel.openEtudeOutside() })
            Keys.onReturnPressed: clicked()
            Keys.onEnterPressed: clicked()
        }
    }
}
