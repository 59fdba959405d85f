// The part of the panel that composes an étude: it gathers what is asked for and hands it over.
import QtQuick 2.9
import QtQuick.Controls 2.3
import QtQuick.Layouts 1.3

ColumnLayout {
    id: form
    spacing: 6

    property var view: null
    signal wanted()

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

    Button {
        id: etude
        objectName: "etude"
        property bool isOpen: false
        Layout.fillWidth: true
        implicitHeight: 28
        flat: true
        text: (isOpen ? "\u25be " : "\u25b8 ") + (form.view ? form.view.words.etude : "")
        onClicked: isOpen = !isOpen
        Keys.onReturnPressed: clicked()
        Keys.onEnterPressed: clicked()
    }

    GridLayout {
        visible: etude.isOpen
        columns: form.width < 300 ? 1 : 2
        columnSpacing: 10
        rowSpacing: 4
        Layout.fillWidth: true

        Label { text: form.view ? form.view.words.etudeKind : "" }
        ComboBox {
            id: etudeKind
            objectName: "etudeKind"
            Layout.fillWidth: true
            Layout.preferredWidth: 190
            implicitHeight: 32
            model: form.view ? form.view.etudeKinds : []
            Accessible.name: form.view ? form.view.words.etudeKind : ""
        }
        Label { text: form.view ? form.view.words.etudeKey : "" }
        ComboBox {
            id: etudeKey
            objectName: "etudeKey"
            Layout.fillWidth: true
            Layout.preferredWidth: 190
            implicitHeight: 32
            model: form.view ? form.view.etudeKeys : []
            Accessible.name: form.view ? form.view.words.etudeKey : ""
        }
        Label { text: form.view ? form.view.words.etudeLevel : "" }
        SpinBox {
            id: etudeLevel
            objectName: "etudeLevel"
            implicitHeight: 32
            from: 1
            to: 3
            value: 1
            Accessible.name: form.view ? form.view.words.etudeLevel : ""
        }
        Label { text: form.view ? form.view.words.etudeLength : "" }
        SpinBox {
            id: etudeBars
            objectName: "etudeBars"
            implicitHeight: 32
            from: form.view ? form.view.etudeBars.from : 4
            to: form.view ? form.view.etudeBars.to : 64
            stepSize: form.view ? form.view.etudeBars.step : 4
            value: 16
            Accessible.name: form.view ? form.view.words.etudeLength : ""
        }
        Label {
            text: form.view ? form.view.words.etudeTempo : ""
            wrapMode: Text.WordWrap
            Layout.fillWidth: true
        }
        SpinBox {
            id: etudeTempo
            objectName: "etudeTempo"
            editable: true
            implicitHeight: 32
            from: 0
            to: 132
            stepSize: 4
            value: 0
            Accessible.name: form.view ? form.view.words.etudeTempo : ""
        }
        Label {
            text: form.view ? form.view.words.etudeCompass : ""
            wrapMode: Text.WordWrap
            Layout.fillWidth: true
        }
        TextField {
            id: etudeRange
            objectName: "etudeRange"
            implicitHeight: 32
            Layout.preferredWidth: 130
            Accessible.name: form.view ? form.view.words.etudeCompass : ""
        }
        Button {
            objectName: "compose"
            Layout.fillWidth: true
            Layout.columnSpan: form.width < 300 ? 1 : 2
            implicitHeight: 34
            text: form.view ? form.view.words.compose : ""
            onClicked: form.wanted()
            Keys.onReturnPressed: clicked()
            Keys.onEnterPressed: clicked()
        }
    }
}
