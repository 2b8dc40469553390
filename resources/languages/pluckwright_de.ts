<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Pluckwright</name>
    <message>
        <location filename="../../workbench/handout/parts/words.py"/>
        <source> (practise at {tempo:.0f})</source>
        <translation> (Übetempo {tempo:.0f})</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <location filename="../../workbench/teaching/lessons/bar_rows.py"/>
        <source> and </source>
        <translation> und </translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source> and more</source>
        <translation> und mehr</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <location filename="../../workbench/ui/views/plan/view.py"/>
        <source> min</source>
        <translation> min</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/page.py"/>
        <source>&amp;All bars</source>
        <translation>&amp;Alle Takte</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/player/tuner.py"/>
        <source>&amp;All strings in turn</source>
        <translation>&amp;Alle Saiten nacheinander</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/grades_dialog.py"/>
        <source>&amp;Apply the fit</source>
        <translation>Anpassung &amp;anwenden</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/lessons.py"/>
        <source>&amp;Archive</source>
        <translation>&amp;Archivieren</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/attach.py"/>
        <source>&amp;Attach</source>
        <translation>&amp;Anhängen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/rejected.py"/>
        <source>&amp;Attach it</source>
        <translation>&amp;Anhängen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/reading_keys.py"/>
        <location filename="../../workbench/ui/window/tour.py"/>
        <source>&amp;Back</source>
        <translation>&amp;Zurück</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/lessons.py"/>
        <source>&amp;Back to the shelf</source>
        <translation>&amp;Zurück ins Regal</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/backups_dialog.py"/>
        <source>&amp;Backups</source>
        <translation>&amp;Sicherungen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Backups …</source>
        <translation>&amp;Sicherungen …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <location filename="../../workbench/ui/notes/scope.py"/>
        <source>&amp;Bar</source>
        <translation>&amp;Takt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/page.py"/>
        <source>&amp;Bar before</source>
        <translation>&amp;Takt davor</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/new_piece_dialog.py"/>
        <source>&amp;Bars</source>
        <translation>T&amp;akte</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/trouble_dialog.py"/>
        <source>&amp;Begin a new store</source>
        <translation>&amp;Neuen Speicher beginnen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/handout_dialog.py"/>
        <source>&amp;Booklet, to be folded</source>
        <translation>Bros&amp;chüre zum Falten</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/kit/file_rows.py"/>
        <source>&amp;Choose …</source>
        <translation>&amp;Wählen …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/harmony.py"/>
        <source>&amp;Chords</source>
        <translation>A&amp;kkorde</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/player/trainer.py"/>
        <source>&amp;Climb while a span is looped</source>
        <translation>&amp;Steigern, während ein Ausschnitt als Schleife läuft</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/why_not.py"/>
        <location filename="../../workbench/ui/views/script/reading.py"/>
        <source>&amp;Close</source>
        <translation>&amp;Schließen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Colours</source>
        <translation>&amp;Farben</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/panel.py"/>
        <source>&amp;Compare</source>
        <translation>&amp;Vergleichen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Compare by ear</source>
        <translation>Mit dem Ohr &amp;vergleichen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/new_piece_dialog.py"/>
        <source>&amp;Composer</source>
        <translation>&amp;Komponist</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/report_dialog.py"/>
        <source>&amp;Copy</source>
        <translation>&amp;Kopieren</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/lessons.py"/>
        <source>&amp;Copy for a student …</source>
        <translation>Für Schüler &amp;kopieren …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Copy for another student …</source>
        <translation>&amp;Kopie für andere Schüler …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/reading.py"/>
        <source>&amp;Dark or light</source>
        <translation>&amp;Dunkel/hell</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <location filename="../../workbench/ui/keeping/versions_dialog.py"/>
        <location filename="../../workbench/ui/notes/panel.py"/>
        <location filename="../../workbench/ui/shelf/lessons.py"/>
        <location filename="../../workbench/ui/shelf/pieces.py"/>
        <source>&amp;Delete</source>
        <translation>&amp;Löschen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Delete it</source>
        <translation>Lös&amp;chen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Dissolve the endings</source>
        <translation>Klammern auf&amp;lösen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/groups_dialog.py"/>
        <source>&amp;Dissolve the group</source>
        <translation>Gruppe &amp;auflösen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/player/tuner.py"/>
        <source>&amp;Done</source>
        <translation>&amp;Fertig</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/handout_dialog.py"/>
        <source>&amp;Dots an inch</source>
        <translation>Punkte pro &amp;Zoll</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Empty the bin …</source>
        <translation>&amp;Papierkorb leeren …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Error report …</source>
        <translation>&amp;Fehlerbericht …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Export sound …</source>
        <translation>Klang e&amp;xportieren …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/why_not.py"/>
        <source>&amp;Figures</source>
        <translation>&amp;Ziffern</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/export_dialog.py"/>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/browser.py"/>
        <location filename="../../workbench/ui/help/shortcut_list.py"/>
        <location filename="../../workbench/ui/shelf/filters.py"/>
        <location filename="../../workbench/ui/shelf/pieces.py"/>
        <source>&amp;Find</source>
        <translation>&amp;Suchen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/shelf.py"/>
        <source>&amp;Finger the others</source>
        <translation>Ü&amp;brige berechnen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/tour.py"/>
        <source>&amp;Finish</source>
        <translation>&amp;Fertig</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;First ending</source>
        <translation>&amp;Erste Klammer</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/next.py"/>
        <source>&amp;For whom</source>
        <translation>&amp;Für wen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Forget a student …</source>
        <translation>Schüler &amp;vergessen …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Free note or bar</source>
        <translation>Ton oder Takt frei&amp;geben</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/menu.py"/>
        <source>&amp;Free these {n} notes</source>
        <translation>Diese {n} Töne frei&amp;geben</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/menu.py"/>
        <source>&amp;Free this bar</source>
        <translation>Takt frei&amp;geben</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/menu.py"/>
        <source>&amp;Free this note</source>
        <translation>Ton frei&amp;geben</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/dialogs.py"/>
        <source>&amp;Frets</source>
        <translation>&amp;Bünde</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/scope.py"/>
        <location filename="../../workbench/ui/player/trainer.py"/>
        <source>&amp;From</source>
        <translation>&amp;Von</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/handout_dialog.py"/>
        <source>&amp;From bar</source>
        <translation>&amp;Von Takt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/plan/view.py"/>
        <source>&amp;From day</source>
        <translation>&amp;Ab Tag</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/meeting_dialog.py"/>
        <source>&amp;From the other window's state to mine</source>
        <translation>&amp;Vom Stand des anderen Fensters zu meinem</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Full screen</source>
        <translation>V&amp;ollbild</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/versions_dialog.py"/>
        <source>&amp;Go back to it</source>
        <translation>&amp;Zu ihr zurückkehren</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/history_dialog.py"/>
        <source>&amp;Go to this step</source>
        <translation>&amp;Zu diesem Schritt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <source>&amp;Grade</source>
        <translation>Stu&amp;fe</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/attach.py"/>
        <source>&amp;Grip picture …</source>
        <translation>&amp;Griffbild …</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/offered.py"/>
        <source>&amp;Grips</source>
        <translation>&amp;Griffe</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/groups_dialog.py"/>
        <source>&amp;Groups</source>
        <translation>&amp;Gruppen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <location filename="../../workbench/ui/lesson/playing_fields.py"/>
        <location filename="../../workbench/ui/views/grading/scores_dialog.py"/>
        <source>&amp;Hand</source>
        <translation>Han&amp;d</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Handout …</source>
        <translation>&amp;Arbeitsblatt …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>&amp;Hear both</source>
        <translation>Beides &amp;hören</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/exercises.py"/>
        <source>&amp;Hear it</source>
        <translation>&amp;Anhören</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Help on this</source>
        <translation>&amp;Hilfe hierzu</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Import a score …</source>
        <translation>Noten &amp;importieren …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/playing_fields.py"/>
        <location filename="../../workbench/ui/views/grading/scores_dialog.py"/>
        <location filename="../../workbench/ui/writing/new_piece_dialog.py"/>
        <source>&amp;Instrument</source>
        <translation>&amp;Instrument</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Jump …</source>
        <translation>S&amp;prung …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/meeting_dialog.py"/>
        <source>&amp;Keep both</source>
        <translation>&amp;Beide behalten</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/kit/file_rows.py"/>
        <location filename="../../workbench/ui/views/grading/learning.py"/>
        <source>&amp;Keep it</source>
        <translation>&amp;Behalten</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/versions_dialog.py"/>
        <source>&amp;Keep the lesson as it is …</source>
        <translation>Jetzigen Stand si&amp;chern …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/reading_keys.py"/>
        <source>&amp;Keep them</source>
        <translation>&amp;Übernehmen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/playing_fields.py"/>
        <location filename="../../workbench/ui/writing/new_piece_dialog.py"/>
        <source>&amp;Key</source>
        <translation>&amp;Tonart</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Key signature …</source>
        <translation>&amp;Tonart …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Keys …</source>
        <translation>&amp;Tasten …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/handout_dialog.py"/>
        <location filename="../../workbench/ui/paper/printing.py"/>
        <source>&amp;Large print</source>
        <translation>&amp;Großdruck</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/reading.py"/>
        <source>&amp;Larger</source>
        <translation>&amp;Größer</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Larger text</source>
        <translation>Text g&amp;rößer</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/left_dialog.py"/>
        <source>&amp;Later</source>
        <translation>&amp;Später</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/music_dialog.py"/>
        <source>&amp;Lay it out anew</source>
        <translation>&amp;Neu einrichten</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/scores_dialog.py"/>
        <source>&amp;Learn</source>
        <translation>&amp;Lernen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Learn from fingered scores …</source>
        <translation>Aus Noten mit Fingersätzen &amp;lernen …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/compare_dialog.py"/>
        <source>&amp;Leave as it is</source>
        <translation>So &amp;lassen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/menu.py"/>
        <source>&amp;Left finger</source>
        <translation>&amp;Linker Finger</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Lesson</source>
        <translation>&amp;Lektion</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/attach.py"/>
        <source>&amp;Lesson that teaches the move …</source>
        <translation>&amp;Lektion zu dieser Technik …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/dialogs.py"/>
        <source>&amp;Lessons</source>
        <translation>&amp;Lektionen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/left_dialog.py"/>
        <source>&amp;Lessons with changes</source>
        <translation>&amp;Lektionen mit Änderungen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <source>&amp;Level</source>
        <translation>Ni&amp;veau</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/handout_dialog.py"/>
        <location filename="../../workbench/ui/paper/printing.py"/>
        <source>&amp;Made</source>
        <translation>&amp;Für wen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/pieces.py"/>
        <source>&amp;Make a lesson of it …</source>
        <translation>&amp;Lektion daraus machen …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/import_dialog.py"/>
        <source>&amp;Make the lesson</source>
        <translation>Lektion &amp;anlegen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <source>&amp;Measured hand …</source>
        <translation>Ge&amp;messene Hand …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/meeting_dialog.py"/>
        <source>&amp;Mine stands</source>
        <translation>&amp;Meiner gilt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Music</source>
        <translation>&amp;Musik</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/groups_dialog.py"/>
        <source>&amp;New group …</source>
        <translation>&amp;Neue Gruppe …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;New piece …</source>
        <translation>&amp;Neues Stück …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/panel.py"/>
        <source>&amp;New remark</source>
        <translation>&amp;Neuer Hinweis</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;New remark on the bar</source>
        <translation>&amp;Neuer Unterrichtshinweis</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/tour.py"/>
        <source>&amp;Next</source>
        <translation>&amp;Weiter</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/page.py"/>
        <source>&amp;Next bar</source>
        <translation>&amp;Nächster Takt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/printing.py"/>
        <source>&amp;Next page</source>
        <translation>&amp;Nächste Seite</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/rejected.py"/>
        <source>&amp;Notes of {bar}</source>
        <translation>&amp;Töne, {bar}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/reading_keys.py"/>
        <source>&amp;Onward</source>
        <translation>&amp;Vor</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/lessons.py"/>
        <location filename="../../workbench/ui/shelf/next.py"/>
        <source>&amp;Open</source>
        <translation>Ö&amp;ffnen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/import_dialog.py"/>
        <source>&amp;Open the lesson that is there</source>
        <translation>Vorhandene Lektion &amp;öffnen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/shelf.py"/>
        <source>&amp;Open this lesson</source>
        <translation>Diese Lektion ö&amp;ffnen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/handout_dialog.py"/>
        <source>&amp;Order of the grips</source>
        <translation>&amp;Reihenfolge der Griffe</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/rejected.py"/>
        <source>&amp;Other fingering</source>
        <translation>Anderer &amp;Fingersatz</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/handout_dialog.py"/>
        <source>&amp;Paper</source>
        <translation>&amp;Papier</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/import_dialog.py"/>
        <source>&amp;Parts</source>
        <translation>&amp;Parts</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/reading.py"/>
        <source>&amp;Pedal …</source>
        <translation>&amp;Pedal …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/new_piece_dialog.py"/>
        <source>&amp;Pickup</source>
        <translation>A&amp;uftakt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Pickup …</source>
        <translation>A&amp;uftakt …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/menu.py"/>
        <source>&amp;Pin these {n} notes as they are</source>
        <translation>Diese {n} Töne so &amp;festlegen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <location filename="../../workbench/ui/choices/panel.py"/>
        <location filename="../../workbench/ui/score/menu.py"/>
        <source>&amp;Pin this bar</source>
        <translation>Takt &amp;festlegen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/menu.py"/>
        <source>&amp;Pin this note as it is</source>
        <translation>Ton so &amp;festlegen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/player/tuner.py"/>
        <source>&amp;Pitch of A4</source>
        <translation>&amp;Höhe des A4</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Play or stop</source>
        <translation>Ab&amp;spielen oder anhalten</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/dialogs.py"/>
        <source>&amp;Point to it</source>
        <translation>&amp;Verweisen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <source>&amp;Practice in all</source>
        <translation>Üben ins&amp;gesamt</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/offered.py"/>
        <source>&amp;Practice plan</source>
        <translation>Ü&amp;beplan</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/view.py"/>
        <source>&amp;Print the estimate from now on</source>
        <translation>Ab jetzt Schätzung &amp;drucken</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/left_dialog.py"/>
        <source>&amp;Put back</source>
        <translation>&amp;Zurückholen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <location filename="../../workbench/ui/keeping/trouble_dialog.py"/>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Read the script</source>
        <translation>Skript &amp;lesen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/view.py"/>
        <source>&amp;Reading view</source>
        <translation>&amp;Leseansicht</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/rejected.py"/>
        <source>&amp;Reason</source>
        <translation>&amp;Grund</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <location filename="../../workbench/ui/window/menus.py"/>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederherstellen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/menu.py"/>
        <source>&amp;Remark about it …</source>
        <translation>&amp;Unterrichtshinweis dazu …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/menu.py"/>
        <source>&amp;Remark about them …</source>
        <translation>&amp;Unterrichtshinweis dazu …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/menu.py"/>
        <source>&amp;Remark about this bar …</source>
        <translation>&amp;Unterrichtshinweis zu diesem Takt …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/scores_dialog.py"/>
        <source>&amp;Remove the selected</source>
        <translation>&amp;Ausgewählte entfernen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Repeats and jumps</source>
        <translation>Wiederholungen und Sprün&amp;ge</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/kit/file_rows.py"/>
        <source>&amp;Replace</source>
        <translation>&amp;Ersetzen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/backups_dialog.py"/>
        <location filename="../../workbench/ui/shelf/lessons.py"/>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>&amp;Restore</source>
        <translation>&amp;Wiederherstellen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/trouble_dialog.py"/>
        <source>&amp;Restore the backup</source>
        <translation>Sicherung &amp;wiederherstellen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/menu.py"/>
        <source>&amp;Right finger</source>
        <translation>&amp;Rechter Finger</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Right fingers</source>
        <translation>Finger re&amp;chts</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <source>&amp;Right hand</source>
        <translation>&amp;Rechte Hand</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/player/trainer.py"/>
        <source>&amp;Rounds at each tempo</source>
        <translation>&amp;Runden in jedem Tempo</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/panel.py"/>
        <source>&amp;Same in {bars}</source>
        <translation>&amp;Ebenso in {bars}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/report_dialog.py"/>
        <source>&amp;Save …</source>
        <translation>Speiche&amp;rn …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Score</source>
        <translation>&amp;Noten</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Second ending</source>
        <translation>&amp;Zweite Klammer</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/scope.py"/>
        <source>&amp;Section</source>
        <translation>T&amp;eil</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Section of the selected bars …</source>
        <translation>&amp;Teil aus den gewählten Takten …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/playing_fields.py"/>
        <source>&amp;Semitones</source>
        <translation>Halb&amp;töne</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Shelf …</source>
        <translation>&amp;Regal …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/dialogs.py"/>
        <source>&amp;Show this grip</source>
        <translation>Griff &amp;zeigen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/player/tuner.py"/>
        <source>&amp;Silence</source>
        <translation>S&amp;tille</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/reading.py"/>
        <source>&amp;Smaller</source>
        <translation>&amp;Kleiner</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Sound</source>
        <translation>&amp;Klang</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/player/trainer.py"/>
        <source>&amp;Step</source>
        <translation>&amp;Schritt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/history_dialog.py"/>
        <source>&amp;Steps</source>
        <translation>&amp;Schritte</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/scores_dialog.py"/>
        <source>&amp;Stop</source>
        <translation>&amp;Anhalten</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/panel.py"/>
        <source>&amp;Strong</source>
        <translation>&amp;Fett</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <source>&amp;Student or group</source>
        <translation>&amp;Schüler, Gruppe</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/plan/view.py"/>
        <source>&amp;Student's grade</source>
        <translation>&amp;Stufe des Schülers</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/groups_dialog.py"/>
        <source>&amp;Students</source>
        <translation>&amp;Schüler</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/handout_dialog.py"/>
        <source>&amp;Studio</source>
        <translation>St&amp;udio</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/page.py"/>
        <source>&amp;Take back</source>
        <translation>&amp;Zurücknehmen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Take in an archive …</source>
        <translation>Archiv &amp;aufnehmen …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/panel.py"/>
        <source>&amp;Take it</source>
        <translation>&amp;Nehmen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/view.py"/>
        <source>&amp;Take the estimate as my word</source>
        <translation>&amp;Schätzung als mein Urteil übernehmen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/panel.py"/>
        <source>&amp;Take the other</source>
        <translation>&amp;Anderen nehmen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/easier_dialog.py"/>
        <source>&amp;Take this version</source>
        <translation>&amp;Diese Fassung nehmen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/view.py"/>
        <source>&amp;Techniques</source>
        <translation>&amp;Techniken</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Text size</source>
        <translation>Te&amp;xtgröße</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/meeting_dialog.py"/>
        <source>&amp;Theirs stands</source>
        <translation>&amp;Der andere gilt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/left_dialog.py"/>
        <source>&amp;Throw away</source>
        <translation>&amp;Wegwerfen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Tie to the next</source>
        <translation>&amp;An den nächsten binden</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Time signature …</source>
        <translation>Ta&amp;ktart …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <location filename="../../workbench/ui/writing/new_piece_dialog.py"/>
        <source>&amp;Title</source>
        <translation>T&amp;itel</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Title, composer, arranger …</source>
        <translation>Tite&amp;l, Komponist, Bearbeitung …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/player/trainer.py"/>
        <source>&amp;To</source>
        <translation>&amp;Bis</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Tour of the window</source>
        <translation>&amp;Rundgang durch das Fenster</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/handout_dialog.py"/>
        <source>&amp;Transparent ground</source>
        <translation>&amp;Transparenter Grund</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/trouble_dialog.py"/>
        <source>&amp;Try again</source>
        <translation>&amp;Noch einmal versuchen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <location filename="../../workbench/ui/shelf/lessons.py"/>
        <location filename="../../workbench/ui/shelf/pieces.py"/>
        <location filename="../../workbench/ui/window/menus.py"/>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Untie</source>
        <translation>Haltebogen löse&amp;n</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/player/trainer.py"/>
        <source>&amp;Use it</source>
        <translation>&amp;Anwenden</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/versions_dialog.py"/>
        <source>&amp;Versions</source>
        <translation>&amp;Fassungen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/handout_dialog.py"/>
        <source>&amp;What</source>
        <translation>&amp;Was</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/versions_dialog.py"/>
        <source>&amp;What changed up to</source>
        <translation>&amp;Geändert bis</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/rejected.py"/>
        <source>&amp;What would it cost?</source>
        <translation>&amp;Was würde er kosten?</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/printing.py"/>
        <source>&amp;Whole page</source>
        <translation>Gan&amp;ze Seite</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/attach.py"/>
        <source>&amp;Why not the other fingering …</source>
        <translation>&amp;Warum nicht der andere Fingersatz …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/panel.py"/>
        <source>&amp;Why not …</source>
        <translation>&amp;Warum nicht …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/dialogs.py"/>
        <source>&amp;Words in title, remarks or techniques</source>
        <translation>&amp;Wörter in Titel, Hinweisen oder Techniken</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/view.py"/>
        <source>&amp;Write</source>
        <translation>&amp;Schreiben</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Write again after it</source>
        <translation>Dahinter noch einmal schr&amp;eiben</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/export_dialog.py"/>
        <source>&amp;Write it</source>
        <translation>&amp;Speichern</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>&amp;Write music</source>
        <translation>Musik &amp;schreiben</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/scope.py"/>
        <source>&amp;to</source>
        <translation>b&amp;is</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/fit.py"/>
        <source>'fit --grades --undo' takes it back. Grades already printed stay as they are.</source>
        <translation>„fit --grades --undo“ nimmt das zurück. Bereits gedruckte Stufen bleiben, wie sie sind.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/fit.py"/>
        <source>'fit --undo' takes it back; each lesson's own undo does so for that lesson.</source>
        <translation>„fit --undo“ nimmt das zurück; in jeder Lektion geht das auch mit deren eigenem Rückgängig.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/signs.py"/>
        <source>'{jump}' is no jump; choose one of the list.</source>
        <translation>„{jump}“ ist kein Sprung; wählen Sie einen aus der Liste.</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/leadsheet.py"/>
        <source>'{letters}' is no right-hand pattern; write the letters p i m a with spaces, as in {known}.</source>
        <translation>„{letters}“ ist kein Anschlagmuster; schreiben Sie die Buchstaben p i m a mit Leerzeichen, wie in {known}.</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/shapes/shape.py"/>
        <source>'{name}' is no cost term of a shape; use {names}.</source>
        <translation>„{name}“ ist kein Kostenglied einer Form; verwenden Sie {names}.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/choosing.py"/>
        <source>'{parts}' names no parts; write numbers such as 1,3 or the word all.</source>
        <translation>„{parts}“ nennt keine Parts; schreiben Sie Zahlen wie 1,3 oder das Wort all.</translation>
    </message>
    <message>
        <location filename="../../workbench/sound/timing.py"/>
        <source>'{piece}' has no bars to play there; choose bars of the piece.</source>
        <translation>„{piece}“ hat dort keine Takte zum Spielen; wählen Sie Takte des Stücks.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/signs.py"/>
        <source>'{text}' is too long to be printed there; use at most {most} characters.</source>
        <translation>„{text}“ ist zu lang, um dort gedruckt zu werden; verwenden Sie höchstens {most} Zeichen.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/scripts/script.py"/>
        <source>'{title}' has no bars to explain; choose a score with music.</source>
        <translation>„{title}“ hat keine Takte, die sich erklären lassen; wählen Sie Noten, die Takte enthalten.</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/mei/document.py"/>
        <source>'{title}' has no bars {first} to {last}.</source>
        <translation>„{title}“ hat keine Takte {first} bis {last}.</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/mei/document.py"/>
        <location filename="../../workbench/engraving/strip.py"/>
        <source>'{title}' has no bars; there is nothing to engrave.</source>
        <translation>„{title}“ hat keine Takte; es gibt nichts zu stechen.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/page.py"/>
        <source>'{title}' has no bars; there is nothing to print.</source>
        <translation>„{title}“ hat keine Takte; es gibt nichts zu drucken.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/grip_sheet.py"/>
        <source>'{title}' has no grip of two or more stopped strings; there is no grip sheet to print.</source>
        <translation>„{title}“ hat keinen Griff mit zwei oder mehr gegriffenen Saiten; es gibt kein Griffblatt zu drucken.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/grade.py"/>
        <source>'{title}' has no notes to grade; read a score with notes in it.</source>
        <translation>„{title}“ hat keine Töne, die sich einstufen lassen; lesen Sie Noten ein, die Töne enthalten.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/practice.py"/>
        <source>'{title}' has no notes to learn; read a score with notes in it.</source>
        <translation>„{title}“ hat keine Töne zum Lernen; lesen Sie Noten ein, die Töne enthalten.</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/keys.py"/>
        <source>'{title}' has no notes, so no key suits it better than another.</source>
        <translation>„{title}“ hat keine Noten, darum liegt keine Tonart besser als eine andere.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/grip_sheet.py"/>
        <source>'{title}' has {n} grips, more than one page can show readably; print the handout, which shows the new and hard ones.</source>
        <translation>„{title}“ hat {n} Griffe, mehr, als eine Seite lesbar zeigen kann; drucken Sie das Arbeitsblatt, das die neuen und schweren zeigt.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/lessons.py"/>
        <source>'{title}' is copied for {student}.</source>
        <translation>„{title}“ ist für {student} kopiert.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/lessons.py"/>
        <source>'{title}' is in the bin; it can be restored from there.</source>
        <translation>„{title}“ ist im Papierkorb und lässt sich von dort wiederherstellen.</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/leadsheet.py"/>
        <source>'{title}' is no lead sheet: that is one line of tune with chord symbols above at least half of its bars.</source>
        <translation>„{title}“ ist kein Leadsheet: Das ist eine Melodielinie mit Akkordsymbolen über mindestens der Hälfte ihrer Takte.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/import_dialog.py"/>
        <location filename="../../workbench/ui/writing/new_piece_dialog.py"/>
        <source>'{title}' is on your shelf.</source>
        <translation>„{title}“ steht in Ihrem Regal.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/calibrate.py"/>
        <source>'{title}': grade {grade} is not one of 0 to 8; correct it.</source>
        <translation>„{title}“: Stufe {grade} liegt nicht zwischen 0 und 8; berichtigen Sie sie.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/products.py"/>
        <source>'{what}' cannot be printed; choose one of {known}.</source>
        <translation>„{what}“ kann nicht gedruckt werden; wählen Sie eines von {known}.</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/weights.py"/>
        <source>'{word}' is no way to arrange; choose one of {known}.</source>
        <translation>„{word}“ ist keine Art zu bearbeiten; möglich sind {known}.</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/decisions.py"/>
        <source>'{word}' says nothing of a note in an arrangement; write gone, whole, accepted, voice 2, or octaves such as -1, 0 or 1.</source>
        <translation>„{word}“ sagt nichts über eine Note eines Arrangements; schreiben Sie gone, whole, accepted, voice 2 oder Oktaven wie -1, 0 oder 1.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/sound.py"/>
        <source>(none given)</source>
        <translation>(keine Angabe)</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/files.py"/>
        <source>({n} crotchets a minute)</source>
        <translation>({n} Viertel pro Minute)</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/batch.py"/>
        <source>({seconds:.1f} s)</source>
        <translation>({seconds:.1f} s)</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/finger_keys.py"/>
        <source>+, -</source>
        <translation>+, -</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/shortcut_list.py"/>
        <source>+, -, D, Esc</source>
        <translation>+, -, D, Esc</translation>
    </message>
    <message>
        <location filename="../../workbench/music/telling/form.py"/>
        <location filename="../../workbench/teaching/scripts/files.py"/>
        <source>, then </source>
        <translation>, dann </translation>
    </message>
    <message>
        <location filename="../../workbench/commands/export.py"/>
        <source>, {n} with string and fingers.</source>
        <translation>, davon {n} mit Saite und Fingern.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/batch.py"/>
        <source>- about {n} min left</source>
        <translation>– noch etwa {n} min</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/source.py"/>
        <source>--a4 {hertz:g}: choose 390 to 470 hertz.</source>
        <translation>--a4 {hertz:g}: bitte 390 bis 470 Hertz wählen.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/finger.py"/>
        <source>--alternatives {given}: give a number from 0 to 20.</source>
        <translation>--alternatives {given}: eine Zahl von 0 bis 20 angeben.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/handout.py"/>
        <source>--bars goes with a picture of the music; name the file .svg or .png.</source>
        <translation>--bars gehört zu einem Notenbild; geben Sie der Datei die Endung .svg oder .png.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/sound.py"/>
        <source>--bars {text}: '{piece}' has no bar {number}; its bars are {numbers}.</source>
        <translation>--bars {text}: „{piece}“ hat keinen Takt {number}; die Takte sind {numbers}.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/sound.py"/>
        <source>--bars {text}: the first bar comes after the last; write them in order.</source>
        <translation>--bars {text}: Der erste Takt kommt nach dem letzten; schreiben Sie sie der Reihe nach.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/source.py"/>
        <source>--campanella needs a re-entrant tuning such as the ukulele's with high G; on {instrument} leave it out.</source>
        <translation>--campanella verlangt eine rückläufige Stimmung wie die der Ukulele mit hohem G; auf {instrument} bitte weglassen.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/cluster.py"/>
        <source>--cluster needs Dask; install it with: pip install 'pluckwright[cluster]'.</source>
        <translation>--cluster braucht Dask; einrichten mit: pip install 'pluckwright[cluster]'.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/legato.py"/>
        <source>--compare {bar}: say with --pin what to try in that bar, such as --pin n12-1=left:4.</source>
        <translation>--compare {bar}: Sagen Sie mit --pin, was in diesem Takt versucht werden soll, etwa --pin n12-1=left:4.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/legato.py"/>
        <source>--compare {bar}: there is no bar of that number.</source>
        <translation>--compare {bar}: Einen Takt mit dieser Nummer gibt es nicht.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/fit.py"/>
        <source>--dry-run goes with --grades; write 'fit --grades --dry-run'.</source>
        <translation>--dry-run gehört zu --grades; schreiben Sie „fit --grades --dry-run“.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/shape.py"/>
        <source>--limit {given}: give 1 or more.</source>
        <translation>--limit {given}: 1 oder mehr angeben.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/source.py"/>
        <source>--parts {text}: parts count from 1, the top one.</source>
        <translation>--parts {text}: Die Stimmen zählen ab 1, der obersten.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/source.py"/>
        <source>--parts {text}: write numbers such as 1,3, or all.</source>
        <translation>--parts {text}: Schreiben Sie Nummern wie 1,3 oder all.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/source.py"/>
        <source>--pin {note}: the piece has no note of that id; 'finger' shows the ids.</source>
        <translation>--pin {note}: Das Stück hat keinen Ton mit dieser Kennung; „finger“ zeigt die Kennungen.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/source.py"/>
        <source>--pin {text}: '{word}' is not understood; write string:2, fret:3, left:4 (0 to 4) or right:m (p i m a).</source>
        <translation>--pin {text}: „{word}“ wird nicht verstanden; schreiben Sie string:2, fret:3, left:4 (0 bis 4) oder right:m (p i m a).</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/source.py"/>
        <source>--pin {text}: left fingers are 0 (open) to 4.</source>
        <translation>--pin {text}: Linke Finger sind 0 (leer) bis 4.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/source.py"/>
        <source>--pin {text}: write it like n12=string:2,left:4.</source>
        <translation>--pin {text}: Schreiben Sie es wie n12=string:2,left:4.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/fit.py"/>
        <source>--report needs scores that print fingers; name some.</source>
        <translation>--report braucht Noten mit gedruckten Fingern; nennen Sie welche.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/script.py"/>
        <source>--student {name}: the store has no lesson of that student or group; 'lessons' lists whose there are.</source>
        <translation>--student {name}: Für diesen Namen ist keine Lektion gespeichert; „lessons“ zeigt, für wen es welche gibt.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/handout.py"/>
        <source>--with goes with --what book, which takes several lessons.</source>
        <translation>--with gehört zu --what book, das mehrere Lektionen aufnimmt.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/why_table.py"/>
        <source>0 for the open string, 1 to 4 from index to little finger</source>
        <translation>0 für die leere Saite, 1 bis 4 vom Zeigefinger bis zum kleinen Finger</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/finger_keys.py"/>
        <source>0 to 4</source>
        <translation>0 bis 4</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>0 to 9</source>
        <translation>0 bis 9</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/menu.py"/>
        <source>0, open string</source>
        <translation>0, leere Saite</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/pack.py"/>
        <source>00 whole piece at {tempo} percent</source>
        <translation>00 ganzes Stück mit {tempo} Prozent</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/choosing.py"/>
        <source>1 to {last}</source>
        <translation>1 bis {last}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>1, 2, 4, 8, 6, 3</source>
        <translation>1, 2, 4, 8, 6, 3</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/menu.py"/>
        <source>1, index</source>
        <translation>1, Zeigefinger</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/lengths.py"/>
        <source>16th note</source>
        <translation>16tel</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/menu.py"/>
        <source>2, middle</source>
        <translation>2, Mittelfinger</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/menu.py"/>
        <source>3, ring</source>
        <translation>3, Ringfinger</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/lengths.py"/>
        <source>32nd note</source>
        <translation>32tel</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/menu.py"/>
        <source>4, little finger</source>
        <translation>4, kleiner Finger</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/words.py"/>
        <source>: {n} day of {minutes} min</source>
        <translation>: {n} Tag mit {minutes} min</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/words.py"/>
        <source>: {n} days of {minutes} min</source>
        <translation>: {n} Tage mit {minutes} min</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>A &amp;semitone higher</source>
        <translation>Einen &amp;Halbton höher</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/products.py"/>
        <location filename="../../workbench/handout/sheets/book.py"/>
        <source>A book needs a lesson at least; choose some.</source>
        <translation>Ein Heft braucht mindestens eine Lektion; wählen Sie welche aus.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/studio.py"/>
        <source>A choice is a 'pin' or an 'alternative', not '{kind}'.</source>
        <translation>Eine Entscheidung ist „pin“ oder „alternative“, nicht „{kind}“.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>A chord taken apart, one finger for each string, every note ringing into the next.</source>
        <translation>Ein Akkord wird zerlegt, ein Finger je Saite, jeder Ton klingt in den nächsten hinein.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>A chord that rolls by accident.</source>
        <translation>Ein Akkord, der ungewollt gebrochen klingt.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/words.py"/>
        <source>A dash before a number: guide finger, it slides along its string.</source>
        <translation>Strich vor einer Zahl: Führungsfinger, er gleitet auf seiner Saite.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>A finger stays on its string and slides lightly to the next fret, leading the hand.</source>
        <translation>Ein Finger bleibt auf seiner Saite, gleitet leicht in den nächsten Bund und führt die Hand.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>A finger that is needed again stays down while the others move.</source>
        <translation>Ein Finger, der wieder gebraucht wird, bleibt liegen, während die anderen sich bewegen.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>A finger that repeats at a string crossing.</source>
        <translation>Ein Finger, der sich beim Saitenwechsel wiederholt.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>A gap longer than it need be.</source>
        <translation>Eine Lücke, die länger ist als nötig.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/lengths.py"/>
        <source>A grace note has no length of its own; choose the note that it leads to.</source>
        <translation>Ein Vorschlag hat keine eigene Länge; wählen Sie den Ton, zu dem er führt.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/studio.py"/>
        <source>A group's name has 1 to {n} characters.</source>
        <translation>Der Name einer Gruppe hat 1 bis {n} Zeichen.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/studio.py"/>
        <source>A kept choice</source>
        <translation>Eine gespeicherte Entscheidung</translation>
    </message>
    <message>
        <location filename="../../workbench/store/fingerings.py"/>
        <source>A kept fingering</source>
        <translation>Ein gespeicherter Fingersatz</translation>
    </message>
    <message>
        <location filename="../../workbench/store/forgetting.py"/>
        <source>A kept state</source>
        <translation>Ein aufbewahrter Stand</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/meters.py"/>
        <source>A key has at most seven sharps or flats; choose one of the list.</source>
        <translation>Eine Tonart hat höchstens sieben Kreuze oder B; wählen Sie eine aus der Liste.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/shortcut_list.py"/>
        <source>A key, or what it does</source>
        <translation>Eine Taste oder ihre Wirkung</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/import_dialog.py"/>
        <source>A lead sheet becomes a solo: its tune over a right-hand pattern from its chords</source>
        <translation>Aus einem Leadsheet wird ein Solo: die Melodie über einem Anschlagmuster aus ihren Akkorden</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/edits.py"/>
        <source>A lesson needs a title; write at least one word.</source>
        <translation>Eine Lektion braucht einen Titel; schreiben Sie mindestens ein Wort.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/lessons.py"/>
        <source>A lesson's id has 1 to {n} characters of plain text.</source>
        <translation>Die Kennung einer Lektion hat 1 bis {n} Zeichen einfachen Text.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/caret.py"/>
        <source>A letter from A to G writes a note: {length}.</source>
        <translation>Ein Buchstabe von A bis G schreibt einen Ton: {length}.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bars/view.py"/>
        <source>A letter or a name; empty joins the section before</source>
        <translation>Ein Buchstabe oder Name; leer: mit dem Teil davor verbinden</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>A long note and a short one share the time unevenly; count the small values.</source>
        <translation>Ein langer und ein kurzer Ton teilen die Zeit ungleich; die kleinen Werte zählen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/groups_dialog.py"/>
        <source>A name a line</source>
        <translation>Ein Name pro Zeile</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>A new key signature; play its scale once in this position.</source>
        <translation>Neue Vorzeichen; einmal die Tonleiter in dieser Lage spielen.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>A note begins off the beat and sounds across it; feel the beat that is not played.</source>
        <translation>Ein Ton beginnt neben dem Schlag und klingt über ihn hinweg; den nicht gespielten Schlag fühlen.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>A note cannot be kept for its full length here; let it go on purpose, in time.</source>
        <translation>Ein Ton kann hier nicht in voller Länge gehalten werden; lassen Sie ihn mit Absicht los, im Takt.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>A note that ends by accident.</source>
        <translation>Ein Ton, der zufällig endet.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/words.py"/>
        <source>A number in a circle: the string.</source>
        <translation>Eine Zahl im Kreis: die Saite.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/caret.py"/>
        <source>A number writes its fret on string {string}: {length}.</source>
        <translation>Eine Zahl schreibt ihren Bund auf Saite {string}: {length}.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/fresh.py"/>
        <location filename="../../workbench/music/edits/meters.py"/>
        <source>A pickup is shorter than a bar; choose a shorter one.</source>
        <translation>Ein Auftakt ist kürzer als ein Takt; wählen Sie einen kürzeren.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/handout.py"/>
        <source>A picture shows the music alone; for {what} name a file in .pdf.</source>
        <translation>Ein Bild zeigt nur die Noten; soll es {what} sein, nennen Sie eine .pdf-Datei.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/fresh.py"/>
        <source>A piece has 1 to {most} bars; choose a number there.</source>
        <translation>Ein Stück hat 1 bis {most} Takte; wählen Sie eine Zahl in diesem Bereich.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/bars.py"/>
        <source>A piece has at most {most} bars and this one has {bars}; add fewer.</source>
        <translation>Ein Stück hat höchstens {most} Takte, und dieses hat {bars}; fügen Sie weniger hinzu.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/signs.py"/>
        <source>A piece needs a title; write at least one word.</source>
        <translation>Ein Stück braucht einen Titel; schreiben Sie mindestens ein Wort.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/bars.py"/>
        <location filename="../../workbench/music/edits/meters.py"/>
        <source>A piece needs at least one bar; keep one, or start a new piece.</source>
        <translation>Ein Stück braucht mindestens einen Takt; behalten Sie einen oder beginnen Sie ein neues Stück.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>A pinch: thumb and fingers pluck their strings at the same moment, moving towards each other.</source>
        <translation>Zangengriff: Daumen und Finger zupfen ihre Saiten im selben Augenblick und bewegen sich dabei aufeinander zu.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/plan/view.py"/>
        <source>A plan takes 5 to 240 minutes a day, not {minutes}.</source>
        <translation>Ein Plan braucht 5 bis 240 Minuten am Tag, nicht {minutes}.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>A quick note that leans on the one it leads to.</source>
        <translation>Ein schneller Ton, der sich an den folgenden lehnt.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/signs.py"/>
        <source>A repeat is played 2 to {most} times in all; choose a number there.</source>
        <translation>Eine Wiederholung wird insgesamt 2- bis {most}-mal gespielt; wählen Sie eine Zahl in diesem Bereich.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>A se&amp;mitone lower</source>
        <translation>Einen Halb&amp;ton tiefer</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/sectioning.py"/>
        <source>A section needs a first and a last bar of the piece, in this order.</source>
        <translation>Ein Teil braucht einen ersten und einen letzten Takt des Stücks, in dieser Reihenfolge.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/sectioning.py"/>
        <source>A section needs a letter or a name.</source>
        <translation>Ein Teil braucht einen Buchstaben oder einen Namen.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>A sign sends the player back or on to another place; mark both places in colour.</source>
        <translation>Ein Zeichen schickt zurück oder weiter an eine andere Stelle; beide Stellen farbig markieren.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>A st&amp;ep higher</source>
        <translation>Eine St&amp;ufe höher</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>A ste&amp;p lower</source>
        <translation>Eine Stu&amp;fe tiefer</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>A stiff wrist; rest and shake it out before it tires.</source>
        <translation>Ein steifes Handgelenk; pausieren und ausschütteln, bevor es ermüdet.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/exercises.py"/>
        <source>A strip of music as PDF or PNG</source>
        <translation>Eine Notenzeile als PDF oder PNG</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/one_sentence.py"/>
        <source>A system library is missing ({fault}); run python3 installer/start.py, which names the packages to install.</source>
        <translation>Eine Systembibliothek fehlt ({fault}); führen Sie python3 installer/start.py aus, das die nötigen Pakete nennt.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>A to G</source>
        <translation>A bis G</translation>
    </message>
    <message>
        <location filename="../../workbench/cli.py"/>
        <source>A word of the command holds a zero character, which no name has; type it anew.</source>
        <translation>Ein Wort des Befehls enthält ein Nullzeichen, das kein Name hat; gib es neu ein.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>A&amp;ccept</source>
        <translation>&amp;Gutheißen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/scores_dialog.py"/>
        <source>A&amp;dd scores …</source>
        <translation>Noten &amp;hinzufügen …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/playing_fields.py"/>
        <source>A&amp;rrangement</source>
        <translation>Bea&amp;rbeitung</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/teacher.py"/>
        <source>About {n} minute in all.</source>
        <translation>Insgesamt etwa {n} Minute.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/teacher.py"/>
        <source>About {n} minutes in all.</source>
        <translation>Insgesamt etwa {n} Minuten.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>Accept what arranging did</source>
        <translation>Gutheißen, was das Arrangieren tat</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/import_dialog.py"/>
        <source>Acco&amp;mpaniment</source>
        <translation>&amp;Begleitung</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/import_dialog.py"/>
        <source>Accompaniment</source>
        <translation>Begleitung</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/arrange.py"/>
        <source>Accompaniment: {letters}</source>
        <translation>Begleitung: {letters}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/exercises.py"/>
        <source>Add an exercise</source>
        <translation>Übung hinzufügen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/exercises.py"/>
        <source>Add to the &amp;remarks</source>
        <translation>Zu den &amp;Hinweisen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/model.py"/>
        <source>Added</source>
        <translation>Hinzugefügt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/grades_dialog.py"/>
        <source>After the fit</source>
        <translation>Nach Anpassung</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/marks.py"/>
        <source>After this bar</source>
        <translation>Nach diesem Takt</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/teacher.py"/>
        <source>Against the one printed: {reason}</source>
        <translation>Gegenüber dem gedruckten: {reason}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>Agree with what was done: it stays so</source>
        <translation>Einverstanden sein: Es bleibt so</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/easier_dialog.py"/>
        <source>Aim at &amp;grade</source>
        <translation>Auf Auf &amp;Grad zielenamp;Stufe zielen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/easier_dialog.py"/>
        <source>All are in the key of the lesson, so that a group may play them together. Your decisions on single notes hold. Undo brings the present one back.</source>
        <translation>Alle stehen in der Tonart der Lektion, damit eine Gruppe sie zusammen spielen kann. Ihre Entscheidungen über einzelne Noten gelten. Rückgängig holt die jetzige zurück.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/bar_rows.py"/>
        <source>All bars</source>
        <translation>Alle Takte</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/scores_dialog.py"/>
        <location filename="../../workbench/ui/window/openers.py"/>
        <location filename="../../workbench/ui/window/safe_keeping.py"/>
        <source>All files (*)</source>
        <translation>Alle Dateien (*)</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>All four right-hand fingers pluck at once, the top note a little louder.</source>
        <translation>Alle vier Finger der rechten Hand zupfen zugleich, der oberste Ton etwas lauter.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/safe_keeping.py"/>
        <source>All lessons for {name}, the name in groups and in earlier states, the older backups, and stores that were moved aside will be gone for good. This cannot be undone. Archives and printed pages are yours to look after.</source>
        <translation>Alle Lektionen für {name}, der Name in Gruppen und früheren Ständen, die älteren Sicherungen und beiseitegelegte Lektionsspeicher sind dann endgültig fort. Das lässt sich nicht rückgängig machen. Um Archive und gedruckte Blätter kümmern Sie sich selbst.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>All notes are {n} semitone higher.</source>
        <translation>Alle Töne sind {n} Halbton höher.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>All notes are {n} semitone lower.</source>
        <translation>Alle Töne sind {n} Halbton tiefer.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>All notes are {n} semitones higher.</source>
        <translation>Alle Töne sind {n} Halbtöne höher.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>All notes are {n} semitones lower.</source>
        <translation>Alle Töne sind {n} Halbtöne tiefer.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/tour.py"/>
        <source>All places of the selected note are shown here. Double click another one: the note is fixed there, and the rest of the piece is fingered around it. Ctrl+Z takes it back.</source>
        <translation>Hier sehen Sie alle Plätze des gewählten Tons. Doppelklicken Sie auf einen anderen: Der Ton wird dort festgelegt, und der übrige Fingersatz des Stücks richtet sich danach. Strg+Z nimmt es zurück.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>All that was altered</source>
        <translation>Alles Geänderte</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>All the strings in one quick stroke from the wrist: the thumb downwards, or the index finger to and fro.</source>
        <translation>Alle Saiten in einem raschen Schlag aus dem Handgelenk: der Daumen abwärts oder der Zeigefinger hin und her.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/player/bar.py"/>
        <source>Alone, or louder than the others</source>
        <translation>Allein oder lauter als die anderen</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/scripts/words.py"/>
        <source>Also in this bar: {names}.</source>
        <translation>Außerdem in diesem Takt: {names}.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/finger_keys.py"/>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>Alt+Up, Alt+Down</source>
        <translation>Alt+Pfeil auf, Alt+Pfeil ab</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>An &amp;octave higher</source>
        <translation>Eine &amp;Oktave höher</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>An o&amp;ctave lower</source>
        <translation>Eine O&amp;ktave tiefer</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/rejected.py"/>
        <source>An open string takes finger 0, a stopped note one of 1 to 4.</source>
        <translation>Eine leere Saite hat Finger 0, ein gegriffener Ton einen von 1 bis 4.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/scripts/words.py"/>
        <source>Another pattern: {what}.</source>
        <translation>Ein anderes Muster: {what}.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/filters.py"/>
        <source>Any grade</source>
        <translation>Alle Stufen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/filters.py"/>
        <source>Any instrument</source>
        <translation>Alle Instrumente</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/filters.py"/>
        <source>Any key</source>
        <translation>Alle Tonarten</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/filters.py"/>
        <source>Any student or group</source>
        <translation>Alle Schüler und Gruppen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/filters.py"/>
        <source>Any technique</source>
        <translation>Alle Techniken</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/safe_keeping.py"/>
        <source>Archive of all lessons</source>
        <translation>Archiv aller Lektionen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/safe_keeping.py"/>
        <source>Archives (*.pluckwright)</source>
        <translation>Archive (*.pluckwright)</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <location filename="../../workbench/ui/window/teaching_tabs.py"/>
        <source>Arrangement</source>
        <translation>Arrangement</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/marks.py"/>
        <source>Arranger</source>
        <translation>Bearbeitung</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>As &amp;fingered, then as written</source>
        <translation>Wie &amp;gegriffen, dann wie notiert</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bars/panel.py"/>
        <source>As &amp;written</source>
        <translation>Wie &amp;notiert</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/verdict.py"/>
        <source>As easy as before, nothing cut.</source>
        <translation>So leicht wie vorher, nichts gekürzt.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/panel.py"/>
        <source>As in the other lesson.</source>
        <translation>Wie in der anderen Lektion.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/panel.py"/>
        <location filename="../../workbench/ui/choices/why_not.py"/>
        <source>As it is</source>
        <translation>Wie es ist</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/bar.py"/>
        <source>As much of the piece as can be read (Ctrl+9)</source>
        <translation>So viel vom Stück, wie lesbar ist (Strg+9)</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/why_not.py"/>
        <source>As now: beat {beat}: {reason}</source>
        <translation>Wie jetzt: Schlag {beat}: {reason}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/window.py"/>
        <source>As the system</source>
        <translation>Wie das System</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/why_not.py"/>
        <source>As typed</source>
        <translation>Wie eingegeben</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>As written the piece does not lie on this instrument; it is moved {way}, to {key}.</source>
        <translation>Wie notiert liegt das Stück nicht auf diesem Instrument; es wird verschoben: {way}, nach {key}.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/teacher.py"/>
        <source>At the joins</source>
        <translation>An den Übergängen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/why_not.py"/>
        <source>Attach it to a remark as the fingering not taken, with the reason</source>
        <translation>Mit dem Grund als abgelehnten Fingersatz an einen Unterrichtshinweis hängen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/panel.py"/>
        <source>Attach to a remark</source>
        <translation>An einen Hinweis hängen</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/options.py"/>
        <source>Audience '{audience}' is not known; choose student or teacher.</source>
        <translation>Die Zielgruppe „{audience}“ ist nicht bekannt; wählen Sie student oder teacher.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/words.py"/>
        <source>B with a numeral: barre at that fret; ½B: half barre, over some of the strings.</source>
        <translation>B mit römischer Zahl: Barré in diesem Bund; ½B: halber Barré über einen Teil der Saiten.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/trouble_dialog.py"/>
        <source>B&amp;ackups</source>
        <translation>Sich&amp;erungen</translation>
    </message>
    <message>
        <location filename="../../workbench/store/versions.py"/>
        <source>Back to '{name}'</source>
        <translation>Zurück zu „{name}“</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/reading.py"/>
        <source>Back to the lesson (Esc)</source>
        <translation>Zurück zur Lektion (Esc)</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/backups_dialog.py"/>
        <source>Back up &amp;now</source>
        <translation>&amp;Jetzt sichern</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/safe_keeping.py"/>
        <source>Backing up</source>
        <translation>Es wird gesichert</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/finger_keys.py"/>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>Backspace, Delete</source>
        <translation>Rücktaste, Entf</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/backups_dialog.py"/>
        <source>Backups</source>
        <translation>Sicherungen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/backups_dialog.py"/>
        <source>Backups of the lesson store</source>
        <translation>Sicherungen des Lektionsspeichers</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/charts/lesson.py"/>
        <location filename="../../workbench/handout/parts/teacher.py"/>
        <location filename="../../workbench/ui/views/script/view.py"/>
        <location filename="../../workbench/ui/views/techniques/harmony.py"/>
        <source>Bar</source>
        <translation>Takt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/scope.py"/>
        <source>Bar of the remark</source>
        <translation>Takt des Hinweises</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/verdict.py"/>
        <source>Bar {bars} has no fingering that way.</source>
        <translation>Takt {bars} hat so keinen Fingersatz.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/arrangement.py"/>
        <source>Bar {bars}: no hand can play all the notes you hold to at once; let one of them go first, or allow higher frets.</source>
        <translation>Takt {bars}: Keine Hand kann alle Noten, an denen Sie festhalten, zugleich spielen; geben Sie zuerst eine davon auf oder erlauben Sie höhere Bünde.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/pack.py"/>
        <location filename="../../workbench/handout/sheets/pack_words.py"/>
        <location filename="../../workbench/music/bar_names.py"/>
        <source>Bar {bar}</source>
        <translation>Takt {bar}</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/techniques/exercises.py"/>
        <source>Bar {bar} gives nothing to '{kind}'; choose another exercise.</source>
        <translation>Takt {bar} gibt für „{kind}“ nichts her; wählen Sie eine andere Übung.</translation>
    </message>
    <message>
        <location filename="../../workbench/sound/timing.py"/>
        <source>Bar {bar} has tempo {tempo:g}; give a tempo above 0.</source>
        <translation>Takt {bar} hat das Tempo {tempo:g}; geben Sie ein Tempo über 0 an.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/view.py"/>
        <source>Bar {bar} selected</source>
        <translation>Takt {bar} gewählt</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <location filename="../../workbench/commands/finger.py"/>
        <source>Bar {bar}, beat {beat}</source>
        <translation>Takt {bar}, Schlag {beat}</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>Bar {bar}, beat {beat}: the printed finger {finger} on {pitch} is left out: {why}.</source>
        <translation>Takt {bar}, Schlag {beat}: Der gedruckte Finger {finger} auf {pitch} entfällt: {why}.</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>Bar {bar}, beat {beat}: the printed fret {fret} for {pitch} is left out: {why}.</source>
        <translation>Takt {bar}, Schlag {beat}: Der gedruckte Bund {fret} für {pitch} entfällt: {why}.</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>Bar {bar}, beat {beat}: the printed string {string} for {pitch} is left out: {why}.</source>
        <translation>Takt {bar}, Schlag {beat}: Die gedruckte Saite {string} für {pitch} entfällt: {why}.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/player/bar.py"/>
        <source>Bar {bar}, round {round}, {tempo} %</source>
        <translation>Takt {bar}, Runde {round}, {tempo} %</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>Bar {bar}, {why}.</source>
        <translation>Takt {bar}, {why}.</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>Bar {bar}: no hand can hold these fingers together; free one of the notes.</source>
        <translation>Takt {bar}: Keine Hand kann diese Finger zusammen halten; geben Sie einen der Töne frei.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/pack_words.py"/>
        <source>Bar {bar}: notes and tablature</source>
        <translation>Takt {bar}: Noten und Tabulatur</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>Bar {bar}: one right finger would have to pluck two strings at once; free one of them.</source>
        <translation>Takt {bar}: Ein Finger der rechten Hand müsste zwei Saiten zugleich zupfen; geben Sie einen davon frei.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/telling/warnings.py"/>
        <source>Bar {bar}: the chord symbol {symbol} is not known; there the tune is alone.</source>
        <translation>Takt {bar}: Das Akkordsymbol {symbol} ist nicht bekannt; dort steht die Melodie allein.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/bars/strokes.py"/>
        <source>Bar {bar}: the fingering does not belong to this piece (note {note} is not in it); finger the piece again.</source>
        <translation>Takt {bar}: Der Fingersatz gehört nicht zu diesem Stück (Ton {note} kommt darin nicht vor); setzen Sie die Finger des Stücks neu.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/order/playing.py"/>
        <source>Bar {bar}: the repeats ask for more than {most} bars; lower the number of times the passage is repeated.</source>
        <translation>Takt {bar}: Die Wiederholungen ergeben mehr als {most} Takte; verringern Sie die Zahl der Durchgänge.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/compare_dialog.py"/>
        <source>Bar {bar}: two fingerings compared</source>
        <translation>Takt {bar}: zwei Fingersätze im Vergleich</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/finger.py"/>
        <source>Bar {bar}: {impossible}</source>
        <translation>Takt {bar}: {impossible}</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/legato.py"/>
        <location filename="../../workbench/handout/parts/teacher.py"/>
        <source>Bar {bar}: {reason}</source>
        <translation>Takt {bar}: {reason}</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/easier.py"/>
        <source>Bar {bar}: {what}.</source>
        <translation>Takt {bar}: {what}.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/grade.py"/>
        <source>Bar {number} (also {others}): {what}.</source>
        <translation>Takt {number} (auch {others}): {what}.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/telling/warnings.py"/>
        <source>Bar {number} lasts {length} quarter notes where {beats}/{unit} has {nominal}; filled up with a rest.</source>
        <translation>Takt {number} dauert {length} Viertel, wo {beats}/{unit} {nominal} hat; mit einer Pause aufgefüllt.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/telling/warnings.py"/>
        <source>Bar {number} lasts {length} quarter notes where {beats}/{unit} has {nominal}; kept as written.</source>
        <translation>Takt {number} dauert {length} Viertel, wo {beats}/{unit} {nominal} hat; so belassen.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/building.py"/>
        <source>Bar {number} lasts {length} quarter notes; mend its length.</source>
        <translation>Takt {number} dauert {length} Viertel; berichtigen Sie seine Länge.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/telling/warnings.py"/>
        <source>Bar {number}, beat {beat}: {low} and {high} begin together; an accidental may be wrong in the score. Compare that bar with the print.</source>
        <translation>Takt {number}, Schlag {beat}: {low} und {high} beginnen zugleich; in den Noten ist vielleicht ein Vorzeichen falsch. Vergleichen Sie diesen Takt mit dem Druck.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/finger.py"/>
        <source>Bar {number}, otherwise: {reason}</source>
        <translation>Takt {number}, anders: {reason}</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/grade.py"/>
        <source>Bar {number}: {what}.</source>
        <translation>Takt {number}: {what}.</translation>
    </message>
    <message>
        <location filename="../../workbench/instrument/table.py"/>
        <source>Baritone ukulele</source>
        <translation>Baritonukulele</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/cautions.py"/>
        <source>Barre in {bars}: use the weight of the arm, not the grip of the thumb, and let go between tries.</source>
        <translation>Barré in {bars}: das Gewicht des Arms nutzen, nicht den Druck des Daumens, und zwischen den Versuchen loslassen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bars/panel.py"/>
        <location filename="../../workbench/ui/shelf/model.py"/>
        <location filename="../../workbench/ui/window/columns.py"/>
        <source>Bars</source>
        <translation>Takte</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Bars as &amp;written or as played</source>
        <translation>Takte wie notiert oder &amp;gespielt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bars/panel.py"/>
        <source>Bars as played</source>
        <translation>Takte wie gespielt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bars/panel.py"/>
        <source>Bars as written</source>
        <translation>Takte wie notiert</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/tour.py"/>
        <source>Bars in playing order</source>
        <translation>Takte in Spielfolge</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/fit_report.py"/>
        <source>Bars that differ most from the print</source>
        <translation>Takte, die am meisten vom Druck abweichen</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/legato.py"/>
        <source>Bars that lose most</source>
        <translation>Takte mit dem größten Verlust</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/view.py"/>
        <source>Bars that push the grade up</source>
        <translation>Takte, die die Stufe anheben</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/bars.py"/>
        <source>Bars {first} to {last}</source>
        <translation>Takte {first} bis {last}</translation>
    </message>
    <message>
        <location filename="../../workbench/sound/timing.py"/>
        <source>Bars {first} to {last}: '{piece}' has {count} bars; name a first and a last bar of it.</source>
        <translation>Takt {first} bis {last}: „{piece}“ hat {count} Takte; nennen Sie einen ersten und einen letzten davon.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/bar_names.py"/>
        <source>Bars {first}–{last}</source>
        <translation>Takt {first}–{last}</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/teacher.py"/>
        <location filename="../../workbench/ui/choices/why_table.py"/>
        <location filename="../../workbench/ui/views/techniques/harmony.py"/>
        <source>Beat</source>
        <translation>Schlag</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Beats that fall into three, as in 6/8.</source>
        <translation>Schläge, die sich in drei teilen, wie im 6/8.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/learning.py"/>
        <location filename="../../workbench/ui/views/grading/scores_dialog.py"/>
        <source>Before</source>
        <translation>Vorher</translation>
    </message>
    <message>
        <location filename="../../workbench/store/archiving.py"/>
        <source>Before the archive was merged</source>
        <translation>Bevor das Archiv aufgenommen wurde</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/why_not.py"/>
        <source>Being worked out …</source>
        <translation>Wird berechnet …</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/words.py"/>
        <source>Beside the notes: {hand}, 1 index, 2 middle, 3 ring, 4 little finger.</source>
        <translation>Bei den Noten: {hand}, 1 Zeige-, 2 Mittel-, 3 Ringfinger, 4 kleiner Finger.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/grip_boxes.py"/>
        <source>Black: the finger is set down. Ring: it stays from before.</source>
        <translation>Schwarz: Der Finger wird aufgesetzt. Ring: Er bleibt von vorher liegen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/next.py"/>
        <location filename="../../workbench/ui/views/techniques/shelf.py"/>
        <source>Both have {shared}; it has besides {alone}.</source>
        <translation>Beide haben {shared}; hier kommt dazu: {alone}.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/menu.py"/>
        <source>Both stems on &amp;one string</source>
        <translation>Beide Hälse auf &amp;einer Saite</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/playing_fields.py"/>
        <source>C&amp;apo at fret</source>
        <translation>K&amp;apodaster im Bund</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/browser.py"/>
        <location filename="../../workbench/ui/help/report_dialog.py"/>
        <location filename="../../workbench/ui/keeping/history_dialog.py"/>
        <location filename="../../workbench/ui/keeping/versions_dialog.py"/>
        <location filename="../../workbench/ui/lesson/groups_dialog.py"/>
        <location filename="../../workbench/ui/paper/printing.py"/>
        <location filename="../../workbench/ui/shelf/dialog.py"/>
        <source>C&amp;lose</source>
        <translation>S&amp;chließen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/handout_dialog.py"/>
        <source>C&amp;ontact</source>
        <translation>&amp;Kontakt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/window.py"/>
        <source>Call off what is being worked out</source>
        <translation>Laufende Berechnung abbrechen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/window.py"/>
        <source>Called off.</source>
        <translation>Abgebrochen.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>Campanella now: scales ring across the strings.</source>
        <translation>Jetzt Campanella: Tonleitern klingen über die Saiten hinweg.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <source>Campanella: scales ring across the strings</source>
        <translation>Campanella: Tonleitern klingen über die Saiten hinweg</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/kit/asking.py"/>
        <location filename="../../workbench/ui/window/safe_keeping.py"/>
        <location filename="../../workbench/ui/window/window.py"/>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/teacher.py"/>
        <source>Cannot be played as written</source>
        <translation>Wie notiert nicht spielbar</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/words.py"/>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>Capo</source>
        <translation>Kapodaster</translation>
    </message>
    <message>
        <location filename="../../workbench/instrument/table.py"/>
        <source>Capo {capo}: on {base} it can sit on frets 0 to {frets}.</source>
        <translation>Kapodaster {capo}: Auf {base} kann er in Bund 0 bis {frets} sitzen.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/legato.py"/>
        <source>Causes: {causes}</source>
        <translation>Ursachen: {causes}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/kit/parts.py"/>
        <source>Caution</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/commands.py"/>
        <source>Change a note's length</source>
        <translation>Tonlänge ändern</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/panel.py"/>
        <source>Change a remark</source>
        <translation>Hinweis ändern</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/reading.py"/>
        <source>Change between dark and light (D)</source>
        <translation>Zwischen dunkel und hell wechseln (D)</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/music_dialog.py"/>
        <source>Change instrument or key</source>
        <translation>Instrument oder Tonart ändern</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Change its &amp;length to the chosen one</source>
        <translation>Auf die gewählte &amp;Länge ändern</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <location filename="../../workbench/ui/views/grading/grades_dialog.py"/>
        <source>Change the grade</source>
        <translation>Stufe ändern</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <source>Change the grade level</source>
        <translation>Bereich der Stufe ändern</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <source>Change the hand</source>
        <translation>Hand ändern</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <source>Change the level</source>
        <translation>Niveau ändern</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <location filename="../../workbench/ui/views/plan/view.py"/>
        <source>Change the minutes a day</source>
        <translation>Minuten pro Tag ändern</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <source>Change the practice minutes</source>
        <translation>Übeminuten ändern</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <source>Change the school of fingering</source>
        <translation>Fingersatzschule ändern</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <source>Change the student</source>
        <translation>Schüler ändern</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <source>Change the style</source>
        <translation>Spielweise ändern</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <source>Change the techniques</source>
        <translation>Techniken ändern</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <source>Change the tempo percent</source>
        <translation>Tempo in Prozent ändern</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <source>Change the title</source>
        <translation>Titel ändern</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <source>Change: {what}</source>
        <translation>Ändern: {what}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/meeting_dialog.py"/>
        <source>Changed in two windows</source>
        <translation>In zwei Fenstern geändert</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/finger.py"/>
        <source>Changed to suit the instrument</source>
        <translation>Für das Instrument geändert</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/left_dialog.py"/>
        <source>Changes that were not saved</source>
        <translation>Änderungen, die nicht gespeichert wurden</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/files/text_file.py"/>
        <source>Chapter list</source>
        <translation>Kapitelliste</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/grades_dialog.py"/>
        <source>Chart of the graded lessons</source>
        <translation>Diagramm der eingestuften Lektionen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/plan/view.py"/>
        <source>Charts of the plan</source>
        <translation>Diagramme des Plans</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/playing_fields.py"/>
        <source>Choose a key, or write one such as F, Bb, D minor</source>
        <translation>Wählen Sie eine Tonart oder schreiben Sie eine wie F, Bb, D minor</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>Choose a note in the music or a line of the list.</source>
        <translation>Wählen Sie eine Note im Notenbild oder eine Zeile der Liste.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/files/passage.py"/>
        <source>Choose a resolution from 36 to 1200 dots an inch.</source>
        <translation>Wählen Sie eine Auflösung von 36 bis 1200 Punkten je Zoll.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/files/passage.py"/>
        <source>Choose a width of the picture from 50 to 1000 mm.</source>
        <translation>Wählen Sie für das Bild eine Breite von 50 bis 1000 mm.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/export_dialog.py"/>
        <location filename="../../workbench/ui/paper/handout_dialog.py"/>
        <source>Choose where the file goes</source>
        <translation>Speicherort der Datei wählen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/grades_dialog.py"/>
        <source>Choose your grade in the second column. From five lessons on, the estimate can learn from them. Grades that are printed stay as they are.</source>
        <translation>Wählen Sie Ihre Stufe in der zweiten Spalte. Ab fünf Lektionen kann die Schätzung daraus lernen. Gedruckte Stufen bleiben, wie sie sind.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Chord n&amp;ame …</source>
        <translation>Akkor&amp;dname …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/writer.py"/>
        <source>Chord name</source>
        <translation>Akkordname</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/writer.py"/>
        <source>Chord name over the caret; empty takes it away. Return keeps it.</source>
        <translation>Akkordname über der Schreibmarke; leer entfernt ihn. Eingabe übernimmt.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>Chord names have changed.</source>
        <translation>Akkordnamen sind geändert.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/harmony.py"/>
        <source>Chords of the piece</source>
        <translation>Akkorde des Stücks</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/techniques/exercises.py"/>
        <source>Clap and count the rhythm of {bar}, then play it on the open first string.</source>
        <translation>Den Rhythmus von {bar} klatschen und zählen, dann auf der leeren ersten Saite spielen.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/items.py"/>
        <source>Clap and count the rhythm, then play it on one string.</source>
        <translation>Den Rhythmus klatschen und zählen, dann auf einer Saite spielen.</translation>
    </message>
    <message>
        <location filename="../../workbench/instrument/table.py"/>
        <source>Classical guitar</source>
        <translation>Konzertgitarre</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/reading_keys.py"/>
        <source>Clear</source>
        <translation>Leeren</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/filters.py"/>
        <source>Clear all &amp;filters</source>
        <translation>Alle F&amp;ilter aufheben</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/dialogs.py"/>
        <location filename="../../workbench/ui/shelf/filters.py"/>
        <source>Clear the search</source>
        <translation>Suche leeren</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/reading_keys.py"/>
        <source>Clear: {what}</source>
        <translation>Leeren: {what}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/kit/chart.py"/>
        <source>Click a bar to select it; the arrow keys go from bar to bar</source>
        <translation>Klicken Sie auf einen Takt, um ihn auszuwählen; die Pfeiltasten gehen von Takt zu Takt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/kit/chart.py"/>
        <source>Click a day to go to it; the arrow keys go from day to day</source>
        <translation>Klicken Sie auf einen Tag, um zu ihm zu gehen; die Pfeiltasten gehen von Tag zu Tag</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/neck/moment_words.py"/>
        <source>Click a note to move it.</source>
        <translation>Klicken Sie einen Ton an, um ihn zu verlegen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/tour.py"/>
        <source>Click a note. Its string, fret and fingers are told below the score, and the keys Left and Right go on to its neighbours.</source>
        <translation>Klicken Sie einen Ton an. Saite, Bund und Finger stehen unter den Noten, und mit Pfeil links und Pfeil rechts kommen Sie zu seinen Nachbarn.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/reading_keys.py"/>
        <source>Click here and press the pedal or key</source>
        <translation>Hier klicken und Pedal oder Taste drücken</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/sound_files.py"/>
        <source>Click track alone (*.wav)</source>
        <translation>Nur die Klickspur (*.wav)</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/player/bar.py"/>
        <source>Climb</source>
        <translation>Steigern</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/fit_buttons.py"/>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/scripts/files.py"/>
        <location filename="../../workbench/ui/views/script/view.py"/>
        <source>Closing</source>
        <translation>Schluss</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/signs.py"/>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Coda</source>
        <translation>Coda</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/weights.py"/>
        <source>Common to all editions</source>
        <translation>Allen Ausgaben gemeinsam</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Compare versio&amp;ns …</source>
        <translation>Fassungen &amp;vergleichen …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/versions_dialog.py"/>
        <source>Compare with</source>
        <translation>Vergleichen mit</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/shelf.py"/>
        <source>Compared with {earlier} and {n} other on the shelf.</source>
        <translation>Verglichen mit {earlier} und {n} weiteren im Regal.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/shelf.py"/>
        <source>Compared with {earlier} and {n} others on the shelf.</source>
        <translation>Verglichen mit {earlier} und {n} weiteren im Regal.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/fit.py"/>
        <location filename="../../workbench/ui/keeping/changes_list.py"/>
        <source>Comparing</source>
        <translation>Vergleich läuft</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/next.py"/>
        <source>Comparing the lessons</source>
        <translation>Lektionen vergleichen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/next.py"/>
        <source>Comparing the lessons …</source>
        <translation>Lektionen werden verglichen …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/compare_dialog.py"/>
        <location filename="../../workbench/ui/choices/why_not.py"/>
        <source>Comparison of two fingerings</source>
        <translation>Vergleich zweier Fingersätze</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/model.py"/>
        <location filename="../../workbench/ui/writing/marks.py"/>
        <source>Composer</source>
        <translation>Komponist</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/lessons.py"/>
        <source>Composer: “{line}”</source>
        <translation>Komponist: „{line}“</translation>
    </message>
    <message>
        <location filename="../../workbench/instrument/table.py"/>
        <source>Concert ukulele, high G</source>
        <translation>Konzertukulele, hohes G</translation>
    </message>
    <message>
        <location filename="../../workbench/instrument/table.py"/>
        <source>Concert ukulele, low G</source>
        <translation>Konzertukulele, tiefes G</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/book.py"/>
        <source>Contents</source>
        <translation>Inhalt</translation>
    </message>
    <message>
        <location filename="../../workbench/store/lessons.py"/>
        <location filename="../../workbench/ui/bench/keeper.py"/>
        <source>Copy of '{title}'</source>
        <translation>Kopie von „{title}“</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/lessons.py"/>
        <location filename="../../workbench/ui/window/openers.py"/>
        <source>Copy the lesson</source>
        <translation>Lektion kopieren</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/player/bar.py"/>
        <source>Count in</source>
        <translation>Einzählen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/player/bar.py"/>
        <source>Counting in</source>
        <translation>Es wird eingezählt</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Counting on as if nothing were there.</source>
        <translation>Weiterzählen, als wäre nichts.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Counting six equal beats with no swing.</source>
        <translation>Sechs gleiche Schläge ohne Schwung zählen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/shortcut_list.py"/>
        <source>Ctrl and wheel</source>
        <translation>Strg und Mausrad</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/shortcut_list.py"/>
        <source>Ctrl+Return</source>
        <translation>Strg+Eingabe</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/charts/lesson.py"/>
        <source>Cut notes</source>
        <translation>Gekürzt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/tips.py"/>
        <source>Cut short: {why}</source>
        <translation>Gekürzt: {why}</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/finger.py"/>
        <source>Cut where the playing order jumps</source>
        <translation>Gekürzt, wo die Spielfolge springt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>D&amp;ouble bar line</source>
        <translation>D&amp;oppelter Taktstrich</translation>
    </message>
    <message>
        <location filename="../../workbench/music/telling/form.py"/>
        <source>D.C. (from the beginning)</source>
        <translation>D.C. (von vorn)</translation>
    </message>
    <message>
        <location filename="../../workbench/music/telling/form.py"/>
        <source>D.S. (from the sign)</source>
        <translation>D.S. (vom Zeichen)</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/grip_boxes.py"/>
        <source>Dash: guide finger, it slides here.</source>
        <translation>Strich: Führungsfinger, er gleitet hierher.</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/charts/lesson.py"/>
        <location filename="../../workbench/handout/parts/plan_grid.py"/>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/files.py"/>
        <source>Day {day}, free</source>
        <translation>Tag {day}, frei</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/files.py"/>
        <source>Day {day}, {n} minute</source>
        <translation>Tag {day}, {n} Minute</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/files.py"/>
        <source>Day {day}, {n} minutes</source>
        <translation>Tag {day}, {n} Minuten</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/plan.py"/>
        <source>Day {n}: the days of a plan count from 1.</source>
        <translation>Tag {n}: Die Tage eines Plans zählen ab 1.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/plan/view.py"/>
        <source>Days a &amp;week</source>
        <translation>&amp;Tage pro Woche</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/plan/view.py"/>
        <source>Days a week</source>
        <translation>Tage pro Woche</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/commands.py"/>
        <source>Delete a note</source>
        <translation>Ton löschen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/panel.py"/>
        <source>Delete a remark</source>
        <translation>Hinweis löschen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/panel.py"/>
        <source>Delete this remark</source>
        <translation>Diesen Unterrichtshinweis löschen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/commands.py"/>
        <source>Delete {bars}</source>
        <translation>{bars} löschen</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/demo.py"/>
        <source>Demo file {file} cannot be read: {why}.</source>
        <translation>Beispieldatei {file} kann nicht gelesen werden: {why}.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/demo.py"/>
        <source>Demo file {file} is damaged at {place}.</source>
        <translation>Beispieldatei {file} ist bei {place} beschädigt.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/demo.py"/>
        <source>Demo file {file} is missing from {folder}.</source>
        <translation>Beispieldatei {file} fehlt in {folder}.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/demo.py"/>
        <source>Demo file {file}: there is no note '{place}' in {title}.</source>
        <translation>Beispieldatei {file}: In {title} gibt es keinen Ton „{place}“.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/session.py"/>
        <source>Demo lesson</source>
        <translation>Demo-Lektion</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/kit/notice.py"/>
        <source>Dismiss</source>
        <translation>Ausblenden</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/commands.py"/>
        <source>Dissolve the endings</source>
        <translation>Klammern auflösen</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/items.py"/>
        <source>Do not stop for slips; afterwards mark where they were and loop those bars.</source>
        <translation>Bei Fehlern nicht anhalten; danach die Stellen anstreichen und diese Takte in der Schleife üben.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/shortcut_list.py"/>
        <source>Does</source>
        <translation>Wirkung</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/files.py"/>
        <source>Done</source>
        <translation>Erledigt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/plan/table.py"/>
        <source>Done, {n} minutes</source>
        <translation>Erledigt, {n} Minuten</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/tour.py"/>
        <source>Done. Step {step} of {steps}</source>
        <translation>Erledigt. Schritt {step} von {steps}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/verdict.py"/>
        <source>Done: as easy as before, nothing cut.</source>
        <translation>Erledigt: so leicht wie vorher, nichts gekürzt.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/verdict.py"/>
        <source>Done: {cut} and {effort}.</source>
        <translation>Erledigt: {cut} und {effort}.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/verdict.py"/>
        <source>Done: {what}.</source>
        <translation>Erledigt: {what}.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/grip_boxes.py"/>
        <source>Dotted ring: it may stay, though nothing sounds there.</source>
        <translation>Punktierter Ring: Er darf liegen bleiben, obwohl dort nichts klingt.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/marks.py"/>
        <source>Double bar line</source>
        <translation>Doppelter Taktstrich</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/finger_keys.py"/>
        <source>Double click</source>
        <translation>Doppelklick</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bars/thumbs.py"/>
        <source>Drawing the small bars</source>
        <translation>Kleine Taktbilder werden gezeichnet</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/panel.py"/>
        <source>Drawing the two fingerings</source>
        <translation>Die beiden Fingersätze werden gezeichnet</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/view.py"/>
        <source>Drop a score here, or choose Import from the Lesson menu.</source>
        <translation>Ziehen Sie Noten hierher, oder wählen Sie „Importieren“ im Menü „Lektion“.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/panel.py"/>
        <source>E&amp;mphasis</source>
        <translation>&amp;Betont</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/exercises.py"/>
        <source>E&amp;xercise</source>
        <translation>Ü&amp;bung</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/plan/view.py"/>
        <location filename="../../workbench/ui/views/script/view.py"/>
        <source>E&amp;xport …</source>
        <translation>E&amp;xportieren …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>Ea&amp;sier, harder …</source>
        <translation>Lei&amp;chter, schwerer …</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>Each finger keeps its own fret, as scales in method books are fingered; set by those scales, no edition was fitted.</source>
        <translation>Jeder Finger behält seinen Bund, wie Schulwerke Tonleitern befingern; nach diesen Tonleitern gesetzt, keine Ausgabe wurde angepasst.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/tour.py"/>
        <source>Each row is a bar as it is played, repeats written out. Select another bar with the arrow keys or a click: everything else in the window follows.</source>
        <translation>Jede Zeile ist ein Takt, wie er gespielt wird, Wiederholungen ausgeschrieben. Wählen Sie mit den Pfeiltasten oder einem Klick einen anderen Takt: Alles andere im Fenster folgt.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/menu.py"/>
        <source>Each stem on a &amp;string of its own</source>
        <translation>Jeder Hals auf &amp;eigener Saite</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/easier_dialog.py"/>
        <source>Easier and harder versions</source>
        <translation>Leichtere und schwerere Fassungen</translation>
    </message>
    <message>
        <location filename="../../workbench/store/forgetting.py"/>
        <location filename="../../workbench/store/lessons.py"/>
        <source>Edit</source>
        <translation>Bearbeitung</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/charts/lesson.py"/>
        <source>Effort and cut notes along the bars</source>
        <translation>Aufwand und gekürzte Töne im Verlauf der Takte</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/safe_keeping.py"/>
        <source>Empty the bin</source>
        <translation>Papierkorb leeren</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/signs.py"/>
        <source>Endings are numbered 1 to {most}; choose there.</source>
        <translation>Klammern sind von 1 bis {most} nummeriert; wählen Sie eine davon.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>Ends early</source>
        <translation>Endet früher</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/strip.py"/>
        <location filename="../../workbench/ui/score/view.py"/>
        <source>Engraving</source>
        <translation>Notensatz</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/strip.py"/>
        <location filename="../../workbench/ui/score/view.py"/>
        <source>Engraving …</source>
        <translation>Noten werden gesetzt …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/shortcut_list.py"/>
        <source>Enter</source>
        <translation>Eingabe</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <source>Enter three spans of the student's left hand in millimetres</source>
        <translation>Drei Spannweiten der linken Hand des Schülers in Millimetern eingeben</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/report_dialog.py"/>
        <source>Error report</source>
        <translation>Fehlerbericht</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/finger_keys.py"/>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/grades_dialog.py"/>
        <source>Estimate</source>
        <translation>Schätzung</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/charts/grades.py"/>
        <source>Estimate: {estimate}. What asks most: {names}.</source>
        <translation>Schätzung: {estimate}. Am meisten fordern: {names}.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/estimate_row.py"/>
        <source>Estimate: {grade}.</source>
        <translation>Schätzung: {grade}.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/estimate_row.py"/>
        <source>Estimate: …</source>
        <translation>Schätzung: …</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/charts/grades.py"/>
        <source>Estimates before and after, beside your grades</source>
        <translation>Schätzungen vorher und nachher neben Ihren Stufen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/easier_dialog.py"/>
        <source>Even the easiest asks more than this grade.</source>
        <translation>Selbst die leichteste verlangt mehr als diese Stufe.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bars/panel.py"/>
        <source>Every bar once, as written, instead of as played ({key})</source>
        <translation>Jeden Takt einmal wie notiert statt wie gespielt ({key})</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/plan_sheet.py"/>
        <source>Everything in the plan of '{title}' is done; there is nothing to print.</source>
        <translation>Im Plan von „{title}“ ist alles erledigt; es gibt nichts zu drucken.</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/charts/lesson.py"/>
        <location filename="../../workbench/teaching/planning/files.py"/>
        <location filename="../../workbench/ui/views/plan/view.py"/>
        <source>Everything is done.</source>
        <translation>Alles ist erledigt.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/pack_words.py"/>
        <source>Everything of the plan is done.</source>
        <translation>Alles im Plan ist erledigt.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/exercises.py"/>
        <source>Exercise</source>
        <translation>Übung</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/techniques/exercises.py"/>
        <source>Exercise '{kind}' is not known; choose one of {known}.</source>
        <translation>Die Übung „{kind}“ ist nicht bekannt; wählen Sie eine von {known}.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/exercises.py"/>
        <source>Exercise at {percent} % of the tempo: {what}</source>
        <translation>Übung mit {percent} % des Tempos: {what}</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/techniques/exercises.py"/>
        <source>Exercise: the piece has no written bar {bar}.</source>
        <translation>Übung: Das Stück hat keinen notierten Takt {bar}.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/view.py"/>
        <source>Exercises</source>
        <translation>Übungen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/sound_files.py"/>
        <source>Export sound</source>
        <translation>Klang exportieren</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/plan/view.py"/>
        <source>Export the plan</source>
        <translation>Plan exportieren</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Export the practice p&amp;lan …</source>
        <translation>Übe&amp;plan exportieren …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Export the scrip&amp;t …</source>
        <translation>Skript &amp;exportieren …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/view.py"/>
        <source>Export the script</source>
        <translation>Skript exportieren</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/export_dialog.py"/>
        <source>Export the {what}</source>
        <translation>Exportieren: {what}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/finger_keys.py"/>
        <source>F</source>
        <translation>F</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/handout_dialog.py"/>
        <source>F&amp;ile</source>
        <translation>Dat&amp;ei</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/export_dialog.py"/>
        <source>F&amp;orm</source>
        <translation>F&amp;orm</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/shortcut_list.py"/>
        <source>F2</source>
        <translation>F2</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/view.py"/>
        <source>F2 or a double click opens the page for a bar; Ctrl+Return there goes on.</source>
        <translation>F2 oder ein Doppelklick öffnet die Seite für einen Takt; dort geht es mit Strg+Eingabe weiter.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/writer.py"/>
        <source>F7, Am/C …</source>
        <translation>F7, Am/C …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/playing_fields.py"/>
        <source>Faithful keeps what can be kept; easy leaves out what makes it hard</source>
        <translation>Treu behält, was zu behalten ist; leicht lässt weg, was es schwer macht</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/pins/typed.py"/>
        <source>Figure {at}, '{word}', cannot be read; write a fret such as 3, string and fret such as 2/3, a finger after a dot such as 2/3.1, p i m or a, or - for any.</source>
        <translation>Angabe {at}, „{word}“, ist nicht lesbar; schreiben Sie einen Bund wie 3, Saite und Bund wie 2/3, einen Finger nach einem Punkt wie 2/3.1, p, i, m oder a, oder - für beliebig.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/cautions.py"/>
        <source>Figures about hands are guidance, not medical advice.</source>
        <translation>Angaben zu Händen sind Anhaltspunkte, kein ärztlicher Rat.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/spans_dialog.py"/>
        <source>Figures about hands are guidance, not medical advice. Warm up, rest between tries, stop at pain, and ask a teacher or a health professional where it stays.</source>
        <translation>Angaben über Hände sind Richtwerte, kein ärztlicher Rat. Wärmen Sie auf, machen Sie Pausen zwischen den Versuchen, hören Sie bei Schmerzen auf und fragen Sie, wenn sie bleiben, eine Lehrkraft oder Ärztin/Arzt oder Therapeut:in.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/why_not.py"/>
        <source>Figures, one for each note</source>
        <translation>Ziffern, eine je Ton</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/kit/file_rows.py"/>
        <location filename="../../workbench/ui/shelf/model.py"/>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/shortcut_list.py"/>
        <source>Find a key or what it does</source>
        <translation>Taste oder Wirkung suchen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/browser.py"/>
        <source>Find in the help</source>
        <translation>In der Hilfe suchen</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/signs.py"/>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Fine</source>
        <translation>Fine</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/rejected.py"/>
        <source>Finger</source>
        <translation>Finger</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/edits.py"/>
        <source>Finger 0 is the open string, but this note is stopped at fret {fret}; choose 1 to 4, or move it to a string where it is open.</source>
        <translation>Finger 0 ist die leere Saite, dieser Ton wird aber im Bund {fret} gegriffen; wählen Sie 1 bis 4 oder legen Sie ihn auf eine Saite, auf der er leer klingt.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/shelf.py"/>
        <source>Finger the lessons that never were, to compare with them</source>
        <translation>Den Fingersatz der Lektionen berechnen, die noch keinen haben, um mit ihnen zu vergleichen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/rejected.py"/>
        <source>Finger the piece that way and write down what it brings</source>
        <translation>Das Stück so mit Fingersatz versehen und notieren, was sich ergibt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/next.py"/>
        <source>Finger those &amp;missing</source>
        <translation>F&amp;ehlende berechnen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/fingers.py"/>
        <source>Fingering</source>
        <translation>Fingersatz</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/rejected.py"/>
        <source>Fingering it the other way</source>
        <translation>Anderen Fingersatz durchrechnen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/why_table.py"/>
        <source>Fingering to try</source>
        <translation>Fingersatz zum Ausprobieren</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/panel.py"/>
        <source>Fingering {number}</source>
        <translation>Fingersatz {number}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/spans_dialog.py"/>
        <source>Fingers 1 and 2</source>
        <translation>Finger 1 und 2</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>Fingers 1 and 2 do the work and the hand stands where they fall, often in second position; fitted to the studies opus 35 as printed by Simrock.</source>
        <translation>Finger 1 und 2 tun die Arbeit, und die Hand steht, wo sie hinfallen, oft in der zweiten Lage; angepasst an die Etüden op. 35 in der Ausgabe von Simrock.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/spans_dialog.py"/>
        <source>Fingers 1 and 4</source>
        <translation>Finger 1 und 4</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/spans_dialog.py"/>
        <source>Fingers 2 and 4</source>
        <translation>Finger 2 und 4</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Fingers farther apart than they like to be; open the hand from its knuckles before the note.</source>
        <translation>Finger weiter auseinander, als sie es gern haben; die Hand vor dem Ton aus den Grundgelenken öffnen.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Fingers take turns on a single line, evenly, and none plays twice running.</source>
        <translation>Die Finger wechseln sich auf einer einstimmigen Linie gleichmäßig ab, und keiner spielt zweimal hintereinander.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Fingers that leave their strings' places.</source>
        <translation>Finger, die den Platz an ihrer Saite verlassen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/scope.py"/>
        <source>First bar of the remark</source>
        <translation>Erster Takt des Hinweises</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>First position, with finger 4 on fret 3 of the strings near the floor and finger 3 on the basses; fitted to the lessons opus 60.</source>
        <translation>Erste Lage, mit Finger 4 im 3. Bund der bodennahen Saiten und Finger 3 auf den Bässen; angepasst an die Übungsstücke op. 60.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/view.py"/>
        <source>First taught in '{title}'.</source>
        <translation>Zuerst in „{title}“ behandelt.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/bar.py"/>
        <source>Fit</source>
        <translation>Einpassen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/bar.py"/>
        <source>Fit the piece into the strip</source>
        <translation>Das Stück in die Notenzeile einpassen</translation>
    </message>
    <message>
        <location filename="../../workbench/store/learning.py"/>
        <source>Fit to fingered scores</source>
        <translation>An Noten mit Fingersatz angepasst</translation>
    </message>
    <message>
        <location filename="../../workbench/store/learning.py"/>
        <source>Fit to my choices</source>
        <translation>Anpassung an meine Entscheidungen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/grades_dialog.py"/>
        <source>Fit without it</source>
        <translation>Ohne sie angepasst</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/calibrate.py"/>
        <source>Fitted to {n} pieces: with each piece left out in turn it misses your grade by {error} on average, the shipped model by {shipped}.</source>
        <translation>An {n} Stücke angepasst: Wird jedes Stück einmal ausgelassen, verfehlt das Modell Ihre Stufe im Mittel um {error}, das ausgelieferte um {shipped}.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Flattening more strings than are needed.</source>
        <translation>Mehr Saiten niederdrücken als nötig.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/sound_files.py"/>
        <source>Folder (*)</source>
        <translation>Ordner (*)</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/cautions_dialog.py"/>
        <source>For every lesson</source>
        <translation>Für jede Lektion</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/next.py"/>
        <source>For whom</source>
        <translation>Für wen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/lessons.py"/>
        <location filename="../../workbench/ui/window/openers.py"/>
        <source>For whom is the copy?</source>
        <translation>Für wen ist die Kopie?</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/handout_dialog.py"/>
        <source>For&amp;mat</source>
        <translation>For&amp;mat</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/safe_keeping.py"/>
        <source>Forget a student</source>
        <translation>Schüler vergessen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Forget what &amp;was learnt</source>
        <translation>Gelerntes verge&amp;ssen</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Forgetting that a sign lasts to the end of its bar.</source>
        <translation>Vergessen, dass ein Zeichen bis zum Ende des Taktes gilt.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/view.py"/>
        <source>Form and harmony</source>
        <translation>Form und Harmonik</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/harmony.py"/>
        <source>Form and keys</source>
        <translation>Form und Tonarten</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/form_map.py"/>
        <source>Form map: {sections}</source>
        <translation>Formübersicht: {sections}</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/material.py"/>
        <source>Form:</source>
        <translation>Form:</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/bars/form_words.py"/>
        <source>Form: {form}</source>
        <translation>Form: {form}</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/shapes/words.py"/>
        <source>Four fingers cannot stop these frets at once, with or without a barre.</source>
        <translation>Vier Finger können diese Bünde nicht zugleich greifen, mit oder ohne Barré.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/hand_edits.py"/>
        <source>Free a note</source>
        <translation>Ton freigeben</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>Free a note of the arrangement</source>
        <translation>Note des Arrangements freigeben</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/hand_edits.py"/>
        <source>Free the bar's notes</source>
        <translation>Töne des Takts freigeben</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/hand_edits.py"/>
        <source>Free {n} notes</source>
        <translation>{n} Töne freigeben</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/why_table.py"/>
        <source>Fret</source>
        <translation>Bund</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/neck/moment_words.py"/>
        <location filename="../../workbench/ui/neck/view.py"/>
        <location filename="../../workbench/ui/window/columns.py"/>
        <location filename="../../workbench/ui/window/panels.py"/>
        <source>Fretboard</source>
        <translation>Griffbrett</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/neck/moment_words.py"/>
        <source>Fretboard in bar {bar}</source>
        <translation>Griffbrett in Takt {bar}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/neck/moment_words.py"/>
        <source>Fretboard in the pickup</source>
        <translation>Griffbrett im Auftakt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/neck/view.py"/>
        <source>Fretboard view</source>
        <translation>Ansicht des Griffbretts</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/following.py"/>
        <source>Fretboard: what is heard in bar {bar}</source>
        <translation>Griffbrett: was in Takt {bar} erklingt</translation>
    </message>
    <message>
        <location filename="../../workbench/store/archiving.py"/>
        <source>From an archive</source>
        <translation>Aus einem Archiv</translation>
    </message>
    <message>
        <location filename="../../workbench/music/telling/warnings.py"/>
        <source>From bar {first} to bar {last} the notes go against the signature of {was}; it is shown in {key}, as it is heard.</source>
        <translation>Von Takt {first} bis Takt {last} widersprechen die Töne den Vorzeichen von {was}; gezeigt wird das Stück in {key}, wie es klingt.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/plan/view.py"/>
        <source>From day</source>
        <translation>Ab Tag</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/dialogs.py"/>
        <source>From string {strings} to string 1: 0 is open, x is not played.</source>
        <translation>Von Saite {strings} bis Saite 1: 0 ist leer, x wird nicht gespielt.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/items.py"/>
        <source>From the last beat of {first} into {second}, then both whole.</source>
        <translation>Übergang ab dem letzten Schlag: {first} – {second}; danach beide ganz.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/teacher.py"/>
        <source>From {before} into {after}: {reason}</source>
        <translation>Von {before} in {after}: {reason}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>Give a note to another voice</source>
        <translation>Note einer anderen Stimme geben</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/arrange.py"/>
        <source>Give either --for-grade or --strict: a version is as strict as it is.</source>
        <translation>Geben Sie entweder --for-grade oder --strict an: Jede Fassung hat ihre eigene Strenge.</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/arrange.py"/>
        <source>Give either a key or a number of semitones to move by, not both.</source>
        <translation>Geben Sie entweder eine Tonart oder eine Zahl von Halbtönen an, nicht beides.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/batch.py"/>
        <source>Give every score more than 0 s and at least 256 MB.</source>
        <translation>Geben Sie jeder Partitur mehr als 0 s und mindestens 256 MB.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Give it to the next &amp;voice</source>
        <translation>In die nächste &amp;Stimme</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/fit.py"/>
        <source>Give scores to learn from, or --grades, or --undo; not several.</source>
        <translation>Entweder Noten zum Lernen angeben oder --grades oder --undo, nicht mehreres.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>Give the note to another voice of the arrangement</source>
        <translation>Die Note einer anderen Stimme des Arrangements geben</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Go &amp;back to a version</source>
        <translation>Zurück zu einer Fa&amp;ssung</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Gra&amp;de</source>
        <translation>St&amp;ufe</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/tips.py"/>
        <source>Grace note</source>
        <translation>Vorschlagsnote</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/charts/grades.py"/>
        <location filename="../../workbench/handout/parts/words.py"/>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <location filename="../../workbench/teaching/lessons/edits.py"/>
        <location filename="../../workbench/ui/shelf/filters.py"/>
        <location filename="../../workbench/ui/shelf/model.py"/>
        <location filename="../../workbench/ui/window/teaching_tabs.py"/>
        <source>Grade</source>
        <translation>Stufe</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/easier_dialog.py"/>
        <source>Grade to aim at</source>
        <translation>Stufe, auf die gezielt wird</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/filters.py"/>
        <source>Grade {grade}</source>
        <translation>Stufe {grade}</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/easier.py"/>
        <source>Grade {grade}: choose a grade from 0 to 8.</source>
        <translation>Grad {grade}: Wählen Sie einen Grad von 0 bis 8.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/words.py"/>
        <source>Grade {number}{level} ({band})</source>
        <translation>Stufe {number}{level} ({band})</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/view.py"/>
        <source>Grade, evidence and charts</source>
        <translation>Stufe, Belege und Diagramme</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/fit.py"/>
        <location filename="../../workbench/ui/views/grading/grades_dialog.py"/>
        <source>Grades are estimated again as before the last fit.</source>
        <translation>Die Stufen werden wieder wie vor der letzten Anpassung geschätzt.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/grades_dialog.py"/>
        <source>Grades are estimated by your own from now on.</source>
        <translation>Stufen werden ab jetzt nach Ihren eigenen geschätzt.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/attach.py"/>
        <source>Grip</source>
        <translation>Griff</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/bars/grip_words.py"/>
        <source>Grip '{grip}': at least one string has to be played.</source>
        <translation>Griff „{grip}“: Mindestens eine Saite muss gespielt werden.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/bars/grip_words.py"/>
        <source>Grip '{grip}': give one fret for each of the {strings} strings, from string {strings} to string 1, such as {example}.</source>
        <translation>Griff „{grip}“: Geben Sie für jede der {strings} Saiten einen Bund an, von Saite {strings} bis Saite 1, etwa {example}.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/neck/grip_neck.py"/>
        <source>Grip of {name}</source>
        <translation>Griff: {name}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/dialogs.py"/>
        <source>Grip picture</source>
        <translation>Griffbild</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/attach.py"/>
        <source>Grip {grip}</source>
        <translation>Griff {grip}</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/bars/grip_words.py"/>
        <source>Grip: '{word}' is no fret of this instrument; write 0 (open) to {highest}, or x for a string that is not played.</source>
        <translation>Griff: „{word}“ ist kein Bund dieses Instruments; schreiben Sie 0 (leer) bis {highest} oder x für eine Saite, die nicht gespielt wird.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/grip_sheet.py"/>
        <source>Grips</source>
        <translation>Griffe</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/scripts/files.py"/>
        <source>Grips {grips}</source>
        <translation>Griffe {grips}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/filters.py"/>
        <source>Group {name}</source>
        <translation>Gruppe {name}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/groups_dialog.py"/>
        <source>Groups</source>
        <translation>Gruppen</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Hammering from too high.</source>
        <translation>Aus zu großer Höhe schlagen.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>Hand</source>
        <translation>Hand</translation>
    </message>
    <message>
        <location filename="../../workbench/instrument/table.py"/>
        <source>Hand '{name}' is not known; choose small, medium, large, or own:34,74,53 (spans of fingers 1-2, 1-4 and 2-4 in mm).</source>
        <translation>Die Hand „{name}“ ist nicht bekannt; wählen Sie small, medium, large oder own:34,74,53 (Spannweiten der Finger 1-2, 1-4 und 2-4 in mm).</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/handout_dialog.py"/>
        <source>Handout</source>
        <translation>Arbeitsblatt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/attach.py"/>
        <source>Hang a grip, another fingering or a lesson on this remark</source>
        <translation>Griff, anderen Fingersatz oder Lektion an diesen Hinweis hängen</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/bar_rows.py"/>
        <source>Hardest</source>
        <translation>Schwerste</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/grade.py"/>
        <source>Hardest bars</source>
        <translation>Schwerste Takte</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/offered.py"/>
        <source>Hea&amp;lth cautions</source>
        <translation>&amp;Hinweise zur Gesundheit</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Health &amp;cautions …</source>
        <translation>&amp;Gesundheitshinweise …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/cautions_dialog.py"/>
        <source>Health cautions</source>
        <translation>Gesundheitshinweise</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/pack_words.py"/>
        <source>Hear {what} at {tempo} percent</source>
        <translation>{what} mit {tempo} Prozent anhören</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/teacher.py"/>
        <source>Held</source>
        <translation>Gehalten</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/tips.py"/>
        <source>Held: all of it</source>
        <translation>Gehalten: ganz</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/tips.py"/>
        <source>Held: {quarters} quarters</source>
        <translation>Gehalten: {quarters} Viertel</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/browser.py"/>
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/playing_fields.py"/>
        <source>Highest &amp;fret</source>
        <translation>Höchster &amp;Bund</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/weights.py"/>
        <source>Highest fret {fret}: choose a fret from 1 to 24.</source>
        <translation>Höchster Bund {fret}: Wählen Sie einen Bund von 1 bis 24.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/playing_fields.py"/>
        <source>Highest-numbered string to string 1, then @ and the scale length in millimetres</source>
        <translation>Saite mit der höchsten Nummer bis Saite 1, dann @ und die Mensur in Millimetern</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/why_not.py"/>
        <source>Hold the bar to what is typed; undo takes it back</source>
        <translation>Den Takt auf das Eingegebene festlegen; „Rückgängig“ nimmt es zurück</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Hold the note longer than written, and decide together how long.</source>
        <translation>Den Ton länger halten als notiert und gemeinsam entscheiden, wie lange.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/import_dialog.py"/>
        <source>Hold to the &amp;fingering that the score prints</source>
        <translation>An den gedruckten &amp;Fingersatz halten</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>Home, End</source>
        <translation>Pos1, Ende</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/plan/table.py"/>
        <source>How</source>
        <translation>Wie</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/charts/lesson.py"/>
        <source>How a bar comes up to tempo</source>
        <translation>Wie ein Takt ins Tempo kommt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/learning.py"/>
        <source>How fingerings are weighed from now on</source>
        <translation>Wie Fingersätze ab jetzt gewichtet werden</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>How many &amp;times …</source>
        <translation>W&amp;ie oft …</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/charts/grades.py"/>
        <source>How the weights moved</source>
        <translation>Wie sich die Gewichte verschoben haben</translation>
    </message>
    <message>
        <location filename="../../workbench/store/lessons.py"/>
        <source>Import</source>
        <translation>Import</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/openers.py"/>
        <source>Import a score</source>
        <translation>Noten importieren</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/lessons.py"/>
        <source>In a remark: “{line}”</source>
        <translation>In einem Unterrichtshinweis: „{line}“</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>In another octave</source>
        <translation>In anderer Oktave</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/filters.py"/>
        <source>In the archive</source>
        <translation>Im Archiv</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/filters.py"/>
        <source>In the bin</source>
        <translation>Im Papierkorb</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/compare_dialog.py"/>
        <location filename="../../workbench/ui/choices/why_not.py"/>
        <source>In this bar</source>
        <translation>In diesem Takt</translation>
    </message>
    <message>
        <location filename="../../workbench/music/telling/warnings.py"/>
        <source>In {n} places two accidentals of one note begin together, first {low} and {high} in bar {number}, beat {beat}; some may be wrong in the score. Compare those bars with the print.</source>
        <translation>An {n} Stellen beginnen zwei Vorzeichen desselben Tons zugleich, zuerst {low} und {high} in Takt {number}, Schlag {beat}; manche sind in den Noten vielleicht falsch. Vergleichen Sie diese Takte mit dem Druck.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/commands.py"/>
        <source>Insert a bar</source>
        <translation>Takt einfügen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Insert a bar &amp;after</source>
        <translation>Takt da&amp;hinter einfügen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Insert a bar &amp;before</source>
        <translation>Takt da&amp;vor einfügen</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/words.py"/>
        <location filename="../../workbench/handout/sheets/grip_sheet.py"/>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <location filename="../../workbench/ui/shelf/filters.py"/>
        <location filename="../../workbench/ui/shelf/model.py"/>
        <source>Instrument</source>
        <translation>Instrument</translation>
    </message>
    <message>
        <location filename="../../workbench/instrument/table.py"/>
        <source>Instrument '{name}' is not known; choose one of {known}, or an own tuning like custom:G4,C4,E4,A4@345.</source>
        <translation>Das Instrument „{name}“ ist nicht bekannt; wählen Sie eines von {known} oder eine eigene Stimmung wie custom:G4,C4,E4,A4@345.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <source>Instrument and &amp;key …</source>
        <translation>Instrument und T&amp;onart …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/music_dialog.py"/>
        <source>Instrument and key</source>
        <translation>Instrument und Tonart</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/harmony.py"/>
        <source>Inversion</source>
        <translation>Umkehrung</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/why_not.py"/>
        <source>It cuts no note.</source>
        <translation>Er kürzt keinen Ton.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/why_not.py"/>
        <source>It cuts {n} note:</source>
        <translation>Er kürzt {n} Ton:</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/why_not.py"/>
        <source>It cuts {n} notes:</source>
        <translation>Er kürzt {n} Töne:</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/pair_view.py"/>
        <source>It ends early.</source>
        <translation>Sie endet früher.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/archive.py"/>
        <location filename="../../workbench/ui/window/safe_keeping.py"/>
        <source>It holds your students' names: keep it to yourself.</source>
        <translation>Darin stehen die Namen Ihrer Schüler: Behalten Sie es für sich.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/scripts/words.py"/>
        <source>It is as {before}.</source>
        <translation>Er ist wie {before}.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/scores_dialog.py"/>
        <source>It is in force: for new lessons, and as one step in those there.</source>
        <translation>Es gilt: für neue Lektionen und, als ein Schritt, in den vorhandenen.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/scripts/words.py"/>
        <source>It is played again.</source>
        <translation>Er wird noch einmal gespielt.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/easier_dialog.py"/>
        <source>It is the version that the lesson has now.</source>
        <translation>Es ist die Fassung, die die Lektion jetzt hat.</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/shapes/words.py"/>
        <source>It needs {reach:.0f} mm between fingers {a} and {b}; the greatest span of a {hand} hand there is {most:.0f} mm.</source>
        <translation>Zwischen Finger {a} und {b} sind {reach:.0f} mm nötig; die größte Spannweite ist dort bei dieser Hand ({hand}) {most:.0f} mm.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/playing_fields.py"/>
        <source>It stays in {key}, for the fingering that the score prints.</source>
        <translation>Es bleibt in {key}, wegen des Fingersatzes, den die Noten drucken.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/groups_dialog.py"/>
        <source>Its students' lessons stay</source>
        <translation>Die Lektionen ihrer Schüler bleiben</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>J</source>
        <translation>J</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/items.py"/>
        <source>Join</source>
        <translation>Verbinden</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/estimate_row.py"/>
        <location filename="../../workbench/ui/views/grading/view.py"/>
        <source>Judging the grade</source>
        <translation>Stufe wird geschätzt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/marks.py"/>
        <source>Jump</source>
        <translation>Sprung</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Keep a &amp;version …</source>
        <translation>&amp;Fassung aufbewahren …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/versions_dialog.py"/>
        <location filename="../../workbench/ui/window/openers.py"/>
        <source>Keep a version</source>
        <translation>Fassung sichern</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/panel.py"/>
        <source>Keep the bar's present fingering whatever changes around it</source>
        <translation>Den jetzigen Fingersatz des Takts behalten, was immer sich ringsum ändert</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/panel.py"/>
        <source>Keep the selected fingering (Enter)</source>
        <translation>Den gewählten Fingersatz behalten (Eingabe)</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/page.py"/>
        <source>Keep the words and go back (Ctrl+Shift+Return)</source>
        <translation>Worte behalten und zurückgehen (Strg+Umschalt+Eingabe)</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/page.py"/>
        <source>Keep the words and go on (Ctrl+Return)</source>
        <translation>Worte behalten und weitergehen (Strg+Eingabe)</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/page.py"/>
        <source>Keep the words and show all bars (Esc)</source>
        <translation>Worte behalten und alle Takte zeigen (Esc)</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/fingers.py"/>
        <source>Keeping the fingering</source>
        <translation>Fingersatz sichern</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Keeping the old stress.</source>
        <translation>Die alte Betonung beibehalten.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/versions_dialog.py"/>
        <source>Kept versions, the newest first</source>
        <translation>Gesicherte Fassungen, neueste zuerst</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/words.py"/>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <location filename="../../workbench/ui/help/shortcut_list.py"/>
        <location filename="../../workbench/ui/shelf/filters.py"/>
        <location filename="../../workbench/ui/shelf/model.py"/>
        <source>Key</source>
        <translation>Tonart</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/transpose.py"/>
        <source>Key '{text}' is not understood; write it like F, Bb, D minor or F#m.</source>
        <translation>Die Tonart „{text}“ ist nicht verständlich; schreiben Sie sie wie F, Bb, D minor oder F#m.</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/transpose.py"/>
        <source>Key '{text}' would need {number} {signs}; write it as {other}.</source>
        <translation>Die Tonart „{text}“ bräuchte {number} {signs}; schreiben Sie sie als {other}.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/marks.py"/>
        <source>Key from this bar on</source>
        <translation>Tonart ab diesem Takt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/marks.py"/>
        <source>Key signature</source>
        <translation>Vorzeichen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/shortcut_list.py"/>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/shortcut_list.py"/>
        <source>Keys and what they do</source>
        <translation>Tasten und ihre Wirkung</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/reading_keys.py"/>
        <source>Keys that turn back</source>
        <translation>Tasten zum Zurückblättern</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/reading_keys.py"/>
        <source>Keys that turn onward</source>
        <translation>Tasten zum Vorblättern</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/edits.py"/>
        <source>Kind '{kind}' is not known; choose one of {kinds}.</source>
        <translation>Die Art „{kind}“ ist nicht bekannt; wählen Sie eine von {kinds}.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/scope.py"/>
        <source>Kind of remark</source>
        <translation>Art des Hinweises</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>L</source>
        <translation>L</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>L&amp;eft fingers</source>
        <translation>Finger l&amp;inks</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/handout_dialog.py"/>
        <source>L&amp;essons</source>
        <translation>&amp;Lektionen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Lan&amp;guage</source>
        <translation>&amp;Sprache</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/bar.py"/>
        <source>Larger score</source>
        <translation>Größere Noten</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/pack_words.py"/>
        <source>Larger text</source>
        <translation>Größere Schrift</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/reading.py"/>
        <source>Larger text (+)</source>
        <translation>Größerer Text (+)</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/scope.py"/>
        <source>Last bar of the remark</source>
        <translation>Letzter Takt des Hinweises</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/filters.py"/>
        <location filename="../../workbench/ui/shelf/model.py"/>
        <source>Last used</source>
        <translation>Zuletzt benutzt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>Lay a note an octave higher</source>
        <translation>Note eine Oktave höher legen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>Lay a note an octave lower</source>
        <translation>Note eine Oktave tiefer legen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/spans_dialog.py"/>
        <source>Lay the left hand on a ruler as on the fretboard, spread in comfort, and measure from finger tip to finger tip.</source>
        <translation>Legen Sie die linke Hand wie auf dem Griffbrett bequem gespreizt auf ein Lineal und messen Sie von Fingerkuppe zu Fingerkuppe.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>Lay the note an octave higher</source>
        <translation>Die Note eine Oktave höher legen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>Lay the note an octave lower</source>
        <translation>Die Note eine Oktave tiefer legen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/easier_dialog.py"/>
        <source>Laying easier and harder versions</source>
        <translation>Leichtere und schwerere Fassungen werden gelegt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/session.py"/>
        <source>Laying out the demo shelf</source>
        <translation>Demo-Regal wird eingerichtet</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/handout_dialog.py"/>
        <location filename="../../workbench/ui/paper/printing.py"/>
        <source>Laying out the pages</source>
        <translation>Seiten werden gesetzt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/kit/page_preview.py"/>
        <location filename="../../workbench/ui/paper/printing.py"/>
        <source>Laying out the pages …</source>
        <translation>Seiten werden gesetzt …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/import_dialog.py"/>
        <location filename="../../workbench/ui/lesson/music_dialog.py"/>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>Laying the piece on the instrument</source>
        <translation>Stück wird für das Instrument eingerichtet</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/easier_dialog.py"/>
        <source>Laying the versions and estimating their grades …</source>
        <translation>Die Fassungen werden gelegt und ihre Stufen geschätzt …</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/handout.py"/>
        <source>Layout</source>
        <translation>Seitenaufbau</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Layout as at the &amp;beginning</source>
        <translation>&amp;Anordnung wie am Anfang</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>Lea&amp;ve out</source>
        <translation>&amp;Weglassen</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/items.py"/>
        <source>Learn</source>
        <translation>Lernen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Learn fro&amp;m my grades …</source>
        <translation>Aus &amp;meinen Stufen lernen …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/scores_dialog.py"/>
        <source>Learn from fingered scores</source>
        <translation>Aus Noten mit Fingersätzen lernen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Learn from my &amp;choices …</source>
        <translation>Aus meinen &amp;Entscheidungen lernen …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/view.py"/>
        <source>Learn from my &amp;grades …</source>
        <translation>Aus &amp;meinen Stufen lernen …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/grades_dialog.py"/>
        <source>Learn from my grades</source>
        <translation>Aus meinen Stufen lernen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/reading.py"/>
        <source>Learn the keys of a pedal</source>
        <translation>Die Tasten eines Pedals anlernen</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/fit.py"/>
        <source>Learning</source>
        <translation>Lernen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/scores_dialog.py"/>
        <source>Learning from fingered scores</source>
        <translation>Lernt aus Noten mit Fingersätzen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/learning.py"/>
        <source>Learning from your choices</source>
        <translation>Aus Ihren Entscheidungen wird gelernt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/grades_dialog.py"/>
        <source>Learning from your grades</source>
        <translation>Aus Ihren Stufen wird gelernt</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/grade.py"/>
        <source>Learning time {time}: {days} at {minutes} minutes a day</source>
        <translation>Lernzeit {time}: {days} mit {minutes} Minuten am Tag</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/learning.py"/>
        <source>Learnt from your choices</source>
        <translation>Aus Ihren Entscheidungen gelernt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>Leave a note out</source>
        <translation>Note weglassen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>Leave the note out; the rest is laid anew</source>
        <translation>Die Note weglassen; das Übrige wird neu gelegt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/why_table.py"/>
        <source>Left</source>
        <translation>Links</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/rejected.py"/>
        <source>Left finger of {note}</source>
        <translation>Linker Finger von {note}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/hand_edits.py"/>
        <source>Left finger {finger}</source>
        <translation>Linker Finger {finger}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/bar.py"/>
        <source>Left fingers</source>
        <translation>Finger links</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/items.py"/>
        <source>Left hand alone: set each grip in turn, lift, set again without looking.</source>
        <translation>Linke Hand allein: jeden Griff der Reihe nach setzen, abheben, ohne hinzusehen wieder setzen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>Left out</source>
        <translation>Weggelassen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/finger_keys.py"/>
        <source>Left, Right</source>
        <translation>Links, Rechts</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>Left, Right, Up, Down</source>
        <translation>Pfeil links, rechts, auf, ab</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/handout_dialog.py"/>
        <source>Left-&amp;handed diagrams</source>
        <translation>Diagramme für Li&amp;nkshänder</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Left-&amp;handed fretboard</source>
        <translation>Griffbrett für Links&amp;händer</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/charts/lesson.py"/>
        <source>Left-hand effort</source>
        <translation>Aufwand links</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/pack_words.py"/>
        <source>Left-handed</source>
        <translation>Linkshändig</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <source>Legato</source>
        <translation>Legato</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/teacher.py"/>
        <source>Legato audit</source>
        <translation>Legato-Prüfung</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/scripts/files.py"/>
        <source>Length about {time}.</source>
        <translation>Dauer etwa {time}.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>Length: {old}, now {new}.</source>
        <translation>Länge: {old}, jetzt {new}.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/grades_dialog.py"/>
        <location filename="../../workbench/ui/window/columns.py"/>
        <source>Lesson</source>
        <translation>Lektion</translation>
    </message>
    <message>
        <location filename="../../workbench/store/states.py"/>
        <source>Lesson '{title}'</source>
        <translation>Lektion „{title}“</translation>
    </message>
    <message>
        <location filename="../../workbench/store/states.py"/>
        <source>Lesson '{title}' is damaged in the lesson store: its present state is missing; go back to a version of it or restore the store from a copy.</source>
        <translation>Lektion „{title}“ ist im Lektionsspeicher beschädigt: Ihr aktueller Stand fehlt; gehen Sie auf eine Fassung zurück oder stellen Sie den Speicher aus einer Kopie wieder her.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/conflict.py"/>
        <source>Lesson '{title}' was changed in another window meanwhile; nothing was overwritten. Choose which of the two stands.</source>
        <translation>Die Lektion „{title}“ wurde inzwischen in einem anderen Fenster geändert; nichts wurde überschrieben. Wählen Sie, welcher der beiden Stände gilt.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/teacher.py"/>
        <source>Lesson history</source>
        <translation>Verlauf der Lektion</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/material.py"/>
        <source>Lesson record</source>
        <translation>Stundenprotokoll</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/dialogs.py"/>
        <source>Lesson that teaches the move</source>
        <translation>Lektion zu dieser Technik</translation>
    </message>
    <message>
        <location filename="../../workbench/store/documents.py"/>
        <source>Lesson {id}</source>
        <translation>Lektion {id}</translation>
    </message>
    <message>
        <location filename="../../workbench/store/states.py"/>
        <source>Lesson {id} is not on the shelf; list them with 'lessons'.</source>
        <translation>Lektion {id} steht nicht im Regal; „lessons“ listet alle auf.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/lessons.py"/>
        <source>Lesson {id} is on the shelf already; duplicate it instead.</source>
        <translation>Lektion {id} steht schon im Regal; duplizieren Sie sie stattdessen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/tour.py"/>
        <source>Lesson, Handout makes the page for the student; Lesson, Shelf holds all your lessons. F1 opens the help at any control, and Help, Tour begins this walk anew.</source>
        <translation>„Lektion“, „Arbeitsblatt“ erzeugt die Seite für den Schüler; „Lektion“, „Regal“ enthält alle Ihre Lektionen. F1 öffnet bei jedem Bedienelement die Hilfe, und „Hilfe“, „Rundgang“ beginnt diesen Rundgang von vorn.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/products.py"/>
        <location filename="../../workbench/ui/shelf/dialog.py"/>
        <location filename="../../workbench/ui/shelf/lessons.py"/>
        <location filename="../../workbench/ui/shelf/model.py"/>
        <source>Lessons</source>
        <translation>Lektionen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/grades_dialog.py"/>
        <source>Lessons and their grades</source>
        <translation>Lektionen und ihre Stufen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/pieces.py"/>
        <source>Lessons made of the piece keep their music</source>
        <translation>Lektionen zu diesem Stück behalten ihre Musik</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/left_dialog.py"/>
        <source>Lessons with changes</source>
        <translation>Lektionen mit Änderungen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/dialog.py"/>
        <source>Lessons, pieces, or what to teach next</source>
        <translation>Lektionen, Stücke oder was als Nächstes kommt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>Let it &amp;free</source>
        <translation>&amp;Freigeben</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>Let the note sound again, in full; the rest is laid around it</source>
        <translation>Die Note wieder ganz erklingen lassen; das Übrige wird darum herum gelegt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bars/view.py"/>
        <source>Letter of the section</source>
        <translation>Buchstabe des Teils</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Letting go with the moving voice.</source>
        <translation>Mit der bewegten Stimme loslassen.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>Level: {old}, now {new}.</source>
        <translation>Niveau: {old}, jetzt {new}.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/playing_fields.py"/>
        <source>Lies best in {key}.</source>
        <translation>Liegt am besten in {key}.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Lifting fingers before they must.</source>
        <translation>Finger heben, bevor sie müssen.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Lifting it out of habit.</source>
        <translation>Ihn aus Gewohnheit heben.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Lifting straight up, without sound.</source>
        <translation>Gerade abheben, ohne Klang.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/plan/view.py"/>
        <source>Likely {minutes} minutes, between {low} and {high}. {left} minutes are left with the warm-ups, to day {last}.</source>
        <translation>Voraussichtlich {minutes} Minuten, zwischen {low} und {high}. Mit dem Einspielen bleiben {left} Minuten, bis Tag {last}.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/offered.py"/>
        <source>Lines for own &amp;words</source>
        <translation>&amp;Zeilen für eigene Worte</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/player/trainer.py"/>
        <source>Long loops tire the hands: warm up first, rest five minutes after every twenty-five, and stop at once where anything hurts; pain that stays belongs before a teacher and a health professional.</source>
        <translation>Lange Schleifen ermüden die Hände: erst aufwärmen, nach je fünfundzwanzig Minuten fünf Minuten Pause, und sofort aufhören, wenn etwas weh tut; mit Schmerz, der bleibt, zur Lehrkraft und in ärztliche Hände.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Looking for every fret afresh.</source>
        <translation>Jeden Bund neu suchen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/playing_fields.py"/>
        <source>Looking for keys that lie well</source>
        <translation>Tonarten, die gut liegen, werden gesucht</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/playing_fields.py"/>
        <source>Looking for keys that lie well …</source>
        <translation>Tonarten, die gut liegen, werden gesucht …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/fingers.py"/>
        <source>Looking for other fingerings</source>
        <translation>Andere Fingersätze suchen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/panel.py"/>
        <source>Looking for other fingerings …</source>
        <translation>Andere Fingersätze werden gesucht …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/view.py"/>
        <source>Looking for techniques</source>
        <translation>Techniken suchen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/lessons.py"/>
        <location filename="../../workbench/ui/shelf/next.py"/>
        <location filename="../../workbench/ui/shelf/pieces.py"/>
        <source>Looking through the shelf</source>
        <translation>Regal durchsehen</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/pack_words.py"/>
        <location filename="../../workbench/ui/player/bar.py"/>
        <source>Loop</source>
        <translation>Schleife</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/techniques/exercises.py"/>
        <source>Loop {bar} {times} times without a gap at the bar line.</source>
        <translation>{bar} {times}-mal als Schleife, ohne Lücke am Taktstrich.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/items.py"/>
        <source>Loop {bar}, the hardest here, a little faster each time it is right twice; then the whole passage.</source>
        <translation>Schleife: {bar}, hier am schwersten, jedes Mal etwas schneller, wenn es zweimal gelungen ist; dann die ganze Stelle.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/plan.py"/>
        <source>Loosen hands and shoulders; slow open strings, then one easy bar you know well.</source>
        <translation>Hände und Schultern lockern; langsam leere Saiten, dann ein leichter, gut bekannter Takt.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Losing the count.</source>
        <translation>Aus dem Zählen kommen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>M</source>
        <translation>M</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/sound_files.py"/>
        <source>MIDI with the lengths really held (*.mid)</source>
        <translation>MIDI mit den wirklich gehaltenen Längen (*.mid)</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bars/view.py"/>
        <source>Make a section</source>
        <translation>Teil anlegen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/handout_dialog.py"/>
        <source>Make the &amp;file</source>
        <translation>Datei er&amp;stellen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/versions_dialog.py"/>
        <source>Make this version the present state; undo takes it back</source>
        <translation>Diese Fassung zum jetzigen Stand machen; „Rückgängig“ nimmt es zurück</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/handout_dialog.py"/>
        <source>Making the handout</source>
        <translation>Arbeitsblatt wird erstellt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/exercises.py"/>
        <location filename="../../workbench/ui/window/sound_files.py"/>
        <source>Making the sound</source>
        <translation>Klang wird erzeugt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/sound_files.py"/>
        <source>Making the student's pack</source>
        <translation>Das Schülerpaket wird gemacht</translation>
    </message>
    <message>
        <location filename="../../workbench/instrument/table.py"/>
        <source>Mandola</source>
        <translation>Mandola</translation>
    </message>
    <message>
        <location filename="../../workbench/instrument/table.py"/>
        <source>Mandolin</source>
        <translation>Mandoline</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <source>Mark rest strokes</source>
        <translation>Angelegte Anschläge markieren</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/files/text_file.py"/>
        <source>Markdown</source>
        <translation>Markdown</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/spans_dialog.py"/>
        <source>Measured hand</source>
        <translation>Gemessene Hand</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bars/facts.py"/>
        <source>Measuring the bars</source>
        <translation>Takte werden gemessen</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/archive.py"/>
        <source>Merging</source>
        <translation>Aufnehmen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/player/bar.py"/>
        <source>Metronome</source>
        <translation>Metronom</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/meeting_dialog.py"/>
        <source>Mine becomes a lesson of its own; theirs is shown</source>
        <translation>Mein Stand wird eine eigene Lektion; der andere wird gezeigt</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/charts/lesson.py"/>
        <location filename="../../workbench/handout/parts/plan_grid.py"/>
        <location filename="../../workbench/ui/views/plan/table.py"/>
        <source>Minutes</source>
        <translation>Minuten</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/plan/view.py"/>
        <source>Minutes a &amp;day</source>
        <translation>&amp;Minuten am Tag</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/edits.py"/>
        <location filename="../../workbench/ui/views/plan/view.py"/>
        <source>Minutes a day</source>
        <translation>Minuten am Tag</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/charts/lesson.py"/>
        <source>Minutes spent on the bar</source>
        <translation>Minuten für den Takt</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/charts/lesson.py"/>
        <source>Most effort:</source>
        <translation>Größter Aufwand:</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/commands.py"/>
        <source>Move a note</source>
        <translation>Ton verschieben</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/commands.py"/>
        <source>Move a note to another voice</source>
        <translation>Ton in andere Stimme setzen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/hand_edits.py"/>
        <source>Move a note to string {string}, fret {fret}</source>
        <translation>Ton auf Saite {string}, Bund {fret} verlegen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bars/view.py"/>
        <source>Move a section</source>
        <translation>Teil verschieben</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/arrange.py"/>
        <source>Moved {way}. Kept: {tune} of the tune, {bass} of the bass, {inner} of the inner notes.</source>
        <translation>Verschoben: {way}. Erhalten: {tune} der Melodie, {bass} des Basses, {inner} der Mittelstimmen.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/setting/blocks.py"/>
        <source>Music</source>
        <translation>Musik</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>Music added: {bars}.</source>
        <translation>Musik hinzugefügt: {bars}.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/shortcut_list.py"/>
        <source>Music and lists</source>
        <translation>Musik und Listen</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>Music taken out: {bars}.</source>
        <translation>Musik herausgenommen: {bars}.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/printed_job.py"/>
        <source>MusicXML holds strings, frets and the fingers of both hands; MIDI the notes as they sound, in playing order.</source>
        <translation>MusicXML enthält Saiten, Bünde und die Finger beider Hände; MIDI die Töne, wie sie klingen, in Spielfolge.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/material.py"/>
        <location filename="../../workbench/handout/setting/remarks.py"/>
        <location filename="../../workbench/handout/sheets/plan_sheet.py"/>
        <source>My notes</source>
        <translation>Meine Notizen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/meeting_dialog.py"/>
        <source>My state stays as a version</source>
        <translation>Mein Stand bleibt als Version</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>N</source>
        <translation>N</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/scope.py"/>
        <source>N&amp;ote</source>
        <translation>T&amp;on</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>N&amp;ote at hand</source>
        <translation>To&amp;n, um den es geht</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bars/view.py"/>
        <source>Name a section</source>
        <translation>Teil benennen</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Neighbouring notes lie on different strings, so that they ring into one another.</source>
        <translation>Benachbarte Töne liegen auf verschiedenen Saiten, sodass sie ineinander klingen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <source>Neighbouring notes of a scale lie on different strings and ring on; for re-entrant tunings</source>
        <translation>Benachbarte Töne einer Tonleiter liegen auf verschiedenen Saiten und klingen weiter; für rückläufige Stimmungen</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/material.py"/>
        <source>New and hard grips</source>
        <translation>Neue und schwere Griffe</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/view.py"/>
        <source>New and next</source>
        <translation>Neu und danach</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/material.py"/>
        <source>New grips</source>
        <translation>Neue Griffe</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/groups_dialog.py"/>
        <source>New group</source>
        <translation>Neue Gruppe</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/scripts/words.py"/>
        <source>New here: positions {most} and {last}.</source>
        <translation>Neu hier: Lagen {most} und {last}.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/scripts/words.py"/>
        <source>New here: {what}.</source>
        <translation>Neu hier: {what}.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/scripts/words.py"/>
        <source>New in it: {names}.</source>
        <translation>Neu darin: {names}.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/shelf.py"/>
        <source>New in this piece</source>
        <translation>Neu in diesem Stück</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/shelf.py"/>
        <source>New in this piece, and what is known</source>
        <translation>Neu in diesem Stück, und was bekannt ist</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/shelf.py"/>
        <source>New in this piece: {new} of {all}</source>
        <translation>Neu in diesem Stück: {new} von {all}</translation>
    </message>
    <message>
        <location filename="../../workbench/store/lessons.py"/>
        <source>New lesson</source>
        <translation>Neue Lektion</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/import_dialog.py"/>
        <source>New lesson from a score</source>
        <translation>Neue Lektion aus Noten</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/import_dialog.py"/>
        <source>New lesson of a piece</source>
        <translation>Neue Lektion zu einem Stück</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/new_piece_dialog.py"/>
        <source>New piece</source>
        <translation>Neues Stück</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/why_not.py"/>
        <source>New: beat {beat}: {reason}</source>
        <translation>Neu: Schlag {beat}: {reason}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Next &amp;bar</source>
        <translation>Nächster Ta&amp;kt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Next &amp;part of the window</source>
        <translation>Nächster Fensterb&amp;ereich</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/kit/page_preview.py"/>
        <source>Next page</source>
        <translation>Nächste Seite</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/reading.py"/>
        <source>Next: {bar}</source>
        <translation>Danach: {bar}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/next.py"/>
        <source>Next: {title}, grade {grade}</source>
        <translation>Als Nächstes: {title}, Stufe {grade}</translation>
    </message>
    <message>
        <location filename="../../workbench/store/backups.py"/>
        <source>No backup of the lesson store can be written into {folder} ({fault}); make room or change the folder's rights.</source>
        <translation>In {folder} lässt sich keine Sicherung des Lektionsspeichers schreiben ({fault}); schaffen Sie Platz oder ändern Sie die Rechte des Ordners.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/harmony.py"/>
        <source>No bar has three different notes, so that no chord is named.</source>
        <translation>Kein Takt hat drei verschiedene Töne, daher wird kein Akkord benannt.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bars/panel.py"/>
        <source>No bar is like that.</source>
        <translation>Kein Takt passt dazu.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/view.py"/>
        <source>No bar selected</source>
        <translation>Kein Takt gewählt</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>No campanella any more: scales lie where they lie best.</source>
        <translation>Keine Campanella mehr: Tonleitern liegen, wo sie am besten liegen.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/cluster.py"/>
        <source>No cluster answers at {address}; write the address that 'dask scheduler' shows, such as tcp://192.168.1.5:8786.</source>
        <translation>Unter {address} antwortet kein Verbund; die Adresse angeben, die 'dask scheduler' zeigt, etwa tcp://192.168.1.5:8786.</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/shapes/words.py"/>
        <source>No finger is needed.</source>
        <translation>Kein Finger wird gebraucht.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/shelf.py"/>
        <source>No fingered lesson for this instrument lies within a grade and takes up what is new here.</source>
        <translation>Keine Lektion mit Fingersatz für dieses Instrument liegt innerhalb einer Stufe und greift auf, was hier neu ist.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/next.py"/>
        <source>No fingered lesson for this instrument takes up what is new here. Import another score, or finger the lessons that have no fingering yet.</source>
        <translation>Keine Lektion mit Fingersatz für dieses Instrument greift auf, was hier neu ist. Importieren Sie weitere Noten, oder berechnen Sie die Lektionen, die noch keinen Fingersatz haben.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/lessons.py"/>
        <source>No lesson fits.</source>
        <translation>Keine Lektion passt.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/safe_keeping.py"/>
        <source>No lesson is for a student yet.</source>
        <translation>Noch ist keine Lektion für einen Schüler.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <location filename="../../workbench/ui/window/panels.py"/>
        <source>No lesson is open</source>
        <translation>Keine Lektion geöffnet</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/page.py"/>
        <source>No lesson is open.</source>
        <translation>Keine Lektion ist geöffnet.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/next.py"/>
        <source>No lesson on the shelf is for them yet.</source>
        <translation>Im Regal ist dafür noch keine Lektion.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/groups_dialog.py"/>
        <source>No lesson on the shelf names a student yet.</source>
        <translation>Noch keine Lektion im Regal nennt einen Schüler.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/lessons.py"/>
        <source>No lessons yet.</source>
        <translation>Noch keine Lektionen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/commands.py"/>
        <source>No note is at hand; put the caret on one, or click it.</source>
        <translation>Hier ist kein Ton; setzen Sie die Schreibmarke auf einen oder klicken Sie ihn an.</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/charts/lesson.py"/>
        <location filename="../../workbench/handout/parts/teacher.py"/>
        <source>No note is cut.</source>
        <translation>Kein Ton ist gekürzt.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/playing_fields.py"/>
        <source>No note lies above this fret</source>
        <translation>Kein Ton liegt über diesem Bund</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/source.py"/>
        <source>No note of '{title}' lies on the neck of this instrument; choose another tuning.</source>
        <translation>Keine Note von „{title}“ liegt auf dem Griffbrett dieses Instruments; wählen Sie eine andere Stimmung.</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/legato.py"/>
        <source>No note of it can be played as it is; choose another key, octave or tuning.</source>
        <translation>So ist kein Ton davon spielbar; eine andere Tonart, Oktave oder Stimmung wählen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/shelf.py"/>
        <source>No other fingered lesson is on the shelf to compare with.</source>
        <translation>Im Regal liegt noch keine andere Lektion mit Fingersatz, mit der sich vergleichen ließe.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/recent.py"/>
        <source>No other lesson yet</source>
        <translation>Noch keine andere Lektion</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/browser.py"/>
        <source>No page has these words.</source>
        <translation>Keine Seite enthält diese Wörter.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bars/thumbs.py"/>
        <source>No picture</source>
        <translation>Kein Bild</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/bar_rows.py"/>
        <source>No remarks yet</source>
        <translation>Noch ohne Hinweise</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/sectioning.py"/>
        <source>No section begins at this bar; choose a bar where one does.</source>
        <translation>In diesem Takt beginnt kein Teil; wählen Sie einen Takt, in dem einer beginnt.</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/shapes/shape.py"/>
        <source>No string of the shape is played; give at least one fret.</source>
        <translation>Keine Saite der Form wird gespielt; geben Sie mindestens einen Bund an.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/window.py"/>
        <source>No version is kept yet</source>
        <translation>Noch keine Fassung aufbewahrt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/versions_dialog.py"/>
        <source>No version is kept yet. Keep one before a larger change.</source>
        <translation>Noch keine Fassung gesichert. Sichern Sie eine vor einer größeren Änderung.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/lengths.py"/>
        <source>No {pitch} follows at once in voice {voice}; write it first, then tie to it.</source>
        <translation>In Stimme {voice} folgt nicht unmittelbar ein {pitch}; schreiben Sie den Ton zuerst und setzen Sie dann den Haltebogen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>Not accepted yet</source>
        <translation>Noch nicht gutgeheißen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/filters.py"/>
        <source>Not for a month</source>
        <translation>Seit einem Monat nicht</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/filters.py"/>
        <source>Not for a year</source>
        <translation>Seit einem Jahr nicht</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/filters.py"/>
        <source>Not for three months</source>
        <translation>Seit drei Monaten nicht</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/why_not.py"/>
        <source>Not possible. {why}</source>
        <translation>Nicht möglich. {why}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/view.py"/>
        <source>Not taught in an earlier lesson.</source>
        <translation>In keiner früheren Lektion behandelt.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/panel.py"/>
        <source>Not the other fingering.</source>
        <translation>Nicht der andere Fingersatz.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/attach.py"/>
        <source>Not this way</source>
        <translation>So nicht</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/teacher.py"/>
        <location filename="../../workbench/ui/choices/why_table.py"/>
        <location filename="../../workbench/ui/notes/rejected.py"/>
        <source>Note</source>
        <translation>Ton</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/scope.py"/>
        <source>Note that is meant</source>
        <translation>Gemeinter Ton</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/charts/lesson.py"/>
        <source>Notes are cut in</source>
        <translation>Gekürzte Töne in</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>Notes changed: {bars}.</source>
        <translation>Töne geändert: {bars}.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Notes of the old key.</source>
        <translation>Töne der alten Tonart.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Notes outside the key; find them on the neck before playing.</source>
        <translation>Töne außerhalb der Tonart; vor dem Spielen auf dem Griffbrett suchen.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/finger.py"/>
        <source>Notes that are cut or cannot be played</source>
        <translation>Gekürzte oder nicht spielbare Töne</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/fit.py"/>
        <location filename="../../workbench/ui/views/grading/scores_dialog.py"/>
        <source>Nothing had to change.</source>
        <translation>Es musste nichts geändert werden.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>Nothing had to change: every note stays.</source>
        <translation>Nichts musste sich ändern: Jede Note bleibt.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/report_dialog.py"/>
        <source>Nothing has gone wrong since the window was opened.</source>
        <translation>Seit dem Öffnen des Fensters ist kein Fehler aufgetreten.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/changes_list.py"/>
        <source>Nothing is different.</source>
        <translation>Es gibt keine Unterschiede.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/told.py"/>
        <source>Nothing is missing in it.</source>
        <translation>Es fehlt nichts darin.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/fit.py"/>
        <source>Nothing is put in force; without --dry-run it is.</source>
        <translation>Nichts wird in Kraft gesetzt; ohne --dry-run schon.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/page.py"/>
        <source>Nothing is said here: the words before speak for {bars}. Write what you say here.</source>
        <translation>Hier wird nichts gesagt: Die Worte davor gelten für {bars}. Schreiben Sie, was Sie hier sagen.</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/shapes/words.py"/>
        <source>Nothing is stretched, crossed or crowded.</source>
        <translation>Nichts ist gespreizt, gekreuzt oder gedrängt.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/why_not.py"/>
        <source>Nothing is typed yet.</source>
        <translation>Noch nichts eingegeben.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bars/panel.py"/>
        <source>Nothing is unfinished: every bar is pinned or written about.</source>
        <translation>Nichts ist offen: Jeder Takt ist festgelegt oder hat einen Hinweis.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/plan/view.py"/>
        <source>Nothing of the plan is left to be played.</source>
        <translation>Im Plan ist nichts mehr zu spielen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/meeting_dialog.py"/>
        <source>Nothing that can be seen.</source>
        <translation>Nichts, was man sehen kann.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/next.py"/>
        <source>Nothing that fits lies within a grade. Further off:</source>
        <translation>Nichts Passendes liegt innerhalb einer Stufe. Weiter entfernt:</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/session.py"/>
        <source>Nothing to redo.</source>
        <translation>Nichts wiederherzustellen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/session.py"/>
        <source>Nothing to undo.</source>
        <translation>Nichts rückgängig zu machen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/kit/notice.py"/>
        <source>Notice</source>
        <translation>Meldung</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/why_table.py"/>
        <location filename="../../workbench/ui/views/grading/learning.py"/>
        <location filename="../../workbench/ui/views/grading/scores_dialog.py"/>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/scripts/words.py"/>
        <source>Now play it through once, slowly, before anything gets faster.</source>
        <translation>Jetzt einmal langsam durchspielen, bevor irgendetwas schneller wird.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/scripts/words.py"/>
        <source>Now to this: {what}.</source>
        <translation>Nun dazu: {what}.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/attach.py"/>
        <source>O&amp;pen it</source>
        <translation>Ö&amp;ffnen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>Octave &amp;down</source>
        <translation>Oktave &amp;tiefer</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>Octave &amp;up</source>
        <translation>Oktave &amp;höher</translation>
    </message>
    <message>
        <location filename="../../workbench/instrument/table.py"/>
        <source>Octave mandolin</source>
        <translation>Oktavmandoline</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>Of the tune</source>
        <translation>Von der Melodie</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/learning.py"/>
        <source>Of your {total} choices the engine would have made {before} before and makes {after} now. Left out of the fit one at a time, {unseen} are still met.</source>
        <translation>Von Ihren {total} Entscheidungen hätte das Programm vorher {before} ebenso getroffen, jetzt sind es {after}. Bleibt beim Lernen jeweils eine davon außen vor, stimmen immer noch {unseen}.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/learning.py"/>
        <source>Of {printed} printed fingers of stopped notes the engine met {before:.1%} before and meets {fitted:.1%} now; {after:.1%} where the score (or, in one score alone, the bar) was left out of the fit.</source>
        <translation>Von {printed} gedruckten Fingern gegriffener Töne traf das Programm vorher {before:.1%} und trifft jetzt {fitted:.1%}; {after:.1%}, wo die Noten (oder, wenn es nur eine Datei ist, der Takt) beim Lernen ausgelassen waren.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/fit.py"/>
        <source>Of {total} choices the engine would have made {before} before and makes {after} now; {unseen} where the choice itself was left out of the fit.</source>
        <translation>Von {total} Entscheidungen hätte das Programm vorher {before} getroffen und trifft jetzt {after}; {unseen}, wenn die Entscheidung selbst bei der Anpassung ausgelassen wurde.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/tour.py"/>
        <source>On paper, and back on the shelf</source>
        <translation>Aufs Papier und zurück ins Regal</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/filters.py"/>
        <source>On the shelf</source>
        <translation>Im Regal</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/why_not.py"/>
        <source>One figure a note: fret 3; string and fret 2/3; a left finger after a dot 2/3.1; a right finger at the end 3i; - for any</source>
        <translation>Eine Ziffer je Ton: Bund 3; Saite und Bund 2/3; ein linker Finger nach einem Punkt 2/3.1; ein rechter Finger am Ende 3i; - für beliebig</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>One finger a fret</source>
        <translation>Ein Finger je Bund</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>One finger stops two or more strings, not all of them; lay it on its side.</source>
        <translation>Ein Finger greift zwei oder mehr Saiten, nicht alle; legen Sie ihn auf die Seite.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/backups_dialog.py"/>
        <source>One is made every day and kept for a week, then one a week and one a month. They lie beside the store: copy them to another disk now and then.</source>
        <translation>Jeden Tag wird eine gemacht und eine Woche behalten, danach eine je Woche und eine je Monat. Sie liegen neben dem Speicher: Kopieren Sie sie ab und zu auf einen anderen Datenträger.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>One note keeps sounding while another voice moves on above or below it.</source>
        <translation>Ein Ton klingt weiter, während sich eine andere Stimme darüber oder darunter bewegt.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/booklet.py"/>
        <source>One page stays blank.</source>
        <translation>Eine Seite bleibt leer.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>One pair of fingers gives way to another, such as 1-2 to 3-4, so that nothing has to jump.</source>
        <translation>Ein Fingerpaar löst das andere ab, etwa 1-2 zu 3-4, sodass nichts springen muss.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>One string sounding before the other.</source>
        <translation>Eine Saite klingt vor der anderen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/filters.py"/>
        <source>Only lessons on the same piece as the open one</source>
        <translation>Nur Lektionen zum selben Stück wie die geöffnete</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/lengths.py"/>
        <source>Only part of the chord goes on; move the held note to another voice, then tie it.</source>
        <translation>Nur ein Teil des Akkords klingt weiter; legen Sie den gehaltenen Ton in eine andere Stimme und setzen Sie dann den Haltebogen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/filters.py"/>
        <source>Only this &amp;piece</source>
        <translation>Nur dieses &amp;Stück</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/panels.py"/>
        <source>Open lesson</source>
        <translation>Geöffnete Lektion</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/shelf.py"/>
        <source>Open the lesson in which the selected move came first</source>
        <translation>Die Lektion öffnen, in der die gewählte Technik zuerst vorkam</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/shelf.py"/>
        <source>Open the lesson that &amp;taught it</source>
        <translation>Einführende &amp;Lektion öffnen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/shelf.py"/>
        <source>Open the lesson that is selected in the list above</source>
        <translation>Die oben in der Liste gewählte Lektion öffnen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/attach.py"/>
        <source>Open the lesson that teaches the move</source>
        <translation>Die Lektion zu dieser Technik öffnen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/left_dialog.py"/>
        <source>Open the lesson with the changes; undo takes them back</source>
        <translation>Die Lektion mit den Änderungen öffnen; Rückgängig nimmt sie zurück</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/scripts/files.py"/>
        <location filename="../../workbench/ui/views/script/view.py"/>
        <source>Opening</source>
        <translation>Einleitung</translation>
    </message>
    <message>
        <location filename="../../workbench/store/finding.py"/>
        <source>Order '{order}' is not known; choose one of {orders}.</source>
        <translation>Die Reihenfolge „{order}“ ist nicht bekannt; wählen Sie eine von {orders}.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/pair_view.py"/>
        <source>Original and arrangement</source>
        <translation>Original und Arrangement</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>Original in the &amp;key of the arrangement</source>
        <translation>Original in der Ton&amp;art des Arrangements</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/tour.py"/>
        <source>Other fingerings</source>
        <translation>Andere Fingersätze</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/panel.py"/>
        <source>Other fingerings of this bar</source>
        <translation>Andere Fingersätze für diesen Takt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/tour.py"/>
        <source>Other ways to play this bar, each with its reason. Select one and press Enter to take it, or leave the bar as it is.</source>
        <translation>Andere Arten, diesen Takt zu spielen, jede mit ihrem Grund. Wählen Sie eine und drücken Sie die Eingabetaste, um sie zu nehmen, oder lassen Sie den Takt, wie er ist.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/playing_fields.py"/>
        <source>Own &amp;tuning</source>
        <translation>Eigene &amp;Stimmung</translation>
    </message>
    <message>
        <location filename="../../workbench/instrument/model.py"/>
        <source>Own tuning {body}</source>
        <translation>Eigene Stimmung {body}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/playing_fields.py"/>
        <source>Own tuning …</source>
        <translation>Eigene Stimmung …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/printing.py"/>
        <source>P&amp;rint …</source>
        <translation>D&amp;rucken …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/finger_keys.py"/>
        <source>P, I, M, A</source>
        <translation>P, I, M, A</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/exercises.py"/>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/sound_files.py"/>
        <source>Packed (*.zip)</source>
        <translation>Gepackt (*.zip)</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/browser.py"/>
        <source>Page</source>
        <translation>Seite</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/printing.py"/>
        <source>Page &amp;back</source>
        <translation>Seite &amp;zurück</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/shortcut_list.py"/>
        <source>Page Down, Space, arrows</source>
        <translation>Bild ab, Leertaste, Pfeiltasten</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/reading_keys.py"/>
        <source>Page Down, space and the arrows always turn the page; a pedal that sends other keys is learnt here.</source>
        <translation>Bild ab, Leertaste und Pfeiltasten blättern immer um; ein Pedal, das andere Tasten sendet, wird hier angelernt.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>Page Up, Page Down</source>
        <translation>Bild auf, Bild ab</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/finger_keys.py"/>
        <source>Page Up, Page Down, Home, End</source>
        <translation>Bild auf, Bild ab, Pos1, Ende</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/setting/paged.py"/>
        <location filename="../../workbench/ui/kit/page_preview.py"/>
        <location filename="../../workbench/ui/paper/printing.py"/>
        <source>Page {page} of {pages}</source>
        <translation>Seite {page} von {pages}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/printing.py"/>
        <source>Pages as they will be printed</source>
        <translation>Seiten, wie sie gedruckt werden</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/browser.py"/>
        <source>Pages of the help</source>
        <translation>Seiten der Hilfe</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Pain. Stop, rest, and try it higher up the neck.</source>
        <translation>Schmerz. Aufhören, ruhen und weiter oben am Hals versuchen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/printing.py"/>
        <source>Pap&amp;er</source>
        <translation>&amp;Papier</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/options.py"/>
        <source>Paper '{paper}' is not known; choose a4 or letter.</source>
        <translation>Das Papier „{paper}“ ist nicht bekannt; wählen Sie a4 oder letter.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/telling/warnings.py"/>
        <source>Part 1 has no pitched notes; part {part} is taken instead.</source>
        <translation>Part 1 hat keine Töne mit Tonhöhe; stattdessen wird Part {part} genommen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/playing_fields.py"/>
        <source>Part with the &amp;bass</source>
        <translation>Stimme mit dem &amp;Bass</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/playing_fields.py"/>
        <source>Part with the tu&amp;ne</source>
        <translation>Stimme mit der Melo&amp;die</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/import_dialog.py"/>
        <location filename="../../workbench/ui/lesson/playing_fields.py"/>
        <source>Part {number}</source>
        <translation>Part {number}</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/weights.py"/>
        <source>Part {part} cannot be tune and bass at once; choose another for one of them.</source>
        <translation>Stimme {part} kann nicht zugleich Melodie und Bass sein; bitte für eines eine andere wählen.</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/parts.py"/>
        <source>Part {part} has no notes in what is taken of '{title}'; choose tune and bass from these parts: {known}.</source>
        <translation>Stimme {part} hat keine Töne in dem, was von „{title}“ genommen wird; Melodie und Bass bitte aus diesen Stimmen wählen: {known}.</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/weights.py"/>
        <source>Parts count from 1, the top one; choose another for tune or bass.</source>
        <translation>Stimmen zählen ab 1, der obersten; bitte für Melodie oder Bass eine andere wählen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/import_dialog.py"/>
        <source>Parts to take</source>
        <translation>Zu übernehmende Parts</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/view.py"/>
        <source>Pass over what earlier lessons &amp;taught</source>
        <translation>&amp;Bekanntes aus früheren Lektionen auslassen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/reading_keys.py"/>
        <source>Pedal keys</source>
        <translation>Pedaltasten</translation>
    </message>
    <message>
        <location filename="../../workbench/music/bar_names.py"/>
        <location filename="../../workbench/ui/writing/marks.py"/>
        <source>Pickup</source>
        <translation>Auftakt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/marks.py"/>
        <source>Pickup before the first bar</source>
        <translation>Auftakt vor dem ersten Takt</translation>
    </message>
    <message>
        <location filename="../../workbench/music/bar_names.py"/>
        <source>Pickup to bar {bar}</source>
        <translation>Auftakt bis Takt {bar}</translation>
    </message>
    <message>
        <location filename="../../workbench/music/telling/form.py"/>
        <source>Pickup, then </source>
        <translation>Auftakt, dann </translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/exercises.py"/>
        <source>Picture (*.png)</source>
        <translation>Bild (*.png)</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bars/panel.py"/>
        <source>Picture of each bar</source>
        <translation>Bild jedes Takts</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/scripts/files.py"/>
        <location filename="../../workbench/ui/notes/figures.py"/>
        <source>Picture of the grip {grip}</source>
        <translation>Griffbild {grip}</translation>
    </message>
    <message>
        <location filename="../../workbench/store/archiving.py"/>
        <location filename="../../workbench/store/pieces.py"/>
        <source>Piece '{title}'</source>
        <translation>Stück „{title}“</translation>
    </message>
    <message>
        <location filename="../../workbench/store/lessons.py"/>
        <location filename="../../workbench/store/pieces.py"/>
        <source>Piece {id} is not on the shelf.</source>
        <translation>Stück {id} steht nicht im Regal.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/dialog.py"/>
        <location filename="../../workbench/ui/shelf/pieces.py"/>
        <source>Pieces</source>
        <translation>Stücke</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/shelf.py"/>
        <source>Pieces to teach next, and to work on side by side</source>
        <translation>Stücke, die als Nächstes oder nebeneinander passen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/hand_edits.py"/>
        <source>Pin a note</source>
        <translation>Ton festlegen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/why_not.py"/>
        <source>Pin a typed fingering</source>
        <translation>Eingegebenen Fingersatz festlegen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/panel.py"/>
        <source>Pin the bar</source>
        <translation>Takt festlegen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/hand_edits.py"/>
        <source>Pin {n} notes</source>
        <translation>{n} Töne festlegen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/rejected.py"/>
        <source>Place</source>
        <translation>Platz</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/rejected.py"/>
        <source>Place of {note}</source>
        <translation>Platz von {note}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/columns.py"/>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/plan/view.py"/>
        <source>Planning the practice</source>
        <translation>Übeplan erstellen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/hand_edits.py"/>
        <source>Play a note on one string</source>
        <translation>Einen Ton auf einer Saite spielen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/hand_edits.py"/>
        <source>Play a note on two strings</source>
        <translation>Einen Ton auf zwei Saiten spielen</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/items.py"/>
        <source>Play it from memory of the hands first, then look and mend what was lost.</source>
        <translation>Zuerst aus dem Gedächtnis der Hände spielen, dann nachsehen und ausbessern, was verloren ging.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/player/bar.py"/>
        <source>Play or stop</source>
        <translation>Abspielen oder anhalten</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/exercises.py"/>
        <source>Play or stop the exercise; it repeats four times</source>
        <translation>Die Übung abspielen oder anhalten; sie wird viermal gespielt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/player/bar.py"/>
        <source>Play or stop: Space on score, bars and fretboard, Ctrl+Space anywhere</source>
        <translation>Abspielen oder anhalten: Leertaste auf Noten, Takten und Griffbrett, Strg+Leertaste überall</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/plan/view.py"/>
        <source>Play the plan's item in a loop</source>
        <translation>Den Punkt des Plans als Schleife spielen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/plan/view.py"/>
        <source>Play the selected item, or the first of today, at its tempo in a loop</source>
        <translation>Den gewählten Punkt, oder den ersten von heute, in seinem Tempo als Schleife spielen</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/items.py"/>
        <source>Play through</source>
        <translation>Durchspielen</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/techniques/exercises.py"/>
        <source>Play {bar} at half the tempo, every note as long as it is written; then a little faster, as long as nothing slips.</source>
        <translation>{bar} im halben Tempo spielen, jeden Ton so lang wie notiert; dann etwas schneller, solange nichts verrutscht.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Play {what}</source>
        <translation>Abspielen: {what}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/marks.py"/>
        <source>Played how many times in all</source>
        <translation>Wie oft insgesamt gespielt</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/read.py"/>
        <source>Played: {bars}</source>
        <translation>Gespielt: {bars}</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/pack_words.py"/>
        <location filename="../../workbench/ui/player/bar.py"/>
        <source>Player</source>
        <translation>Abspielen</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Playing on in the colour of before.</source>
        <translation>In der Farbe von vorher weiterspielen.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Playing the first ending twice.</source>
        <translation>Die erste Klammer zweimal spielen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <source>Practice a &amp;day</source>
        <translation>Üben pro &amp;Tag</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>Practice a day</source>
        <translation>Übezeit am Tag</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>Practice in all</source>
        <translation>Übezeit insgesamt</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/edits.py"/>
        <source>Practice minutes</source>
        <translation>Übeminuten</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Practice pla&amp;n</source>
        <translation>Übe&amp;plan</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/plan_grid.py"/>
        <location filename="../../workbench/ui/window/columns.py"/>
        <location filename="../../workbench/ui/window/teaching_tabs.py"/>
        <source>Practice plan</source>
        <translation>Übeplan</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/plan/table.py"/>
        <source>Practice plan by days</source>
        <translation>Übeplan nach Tagen</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>Practice plan: {n} item is open again.</source>
        <translation>Übeplan: {n} Punkt ist wieder offen.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>Practice plan: {n} item more is done.</source>
        <translation>Übeplan: {n} weiterer Punkt ist erledigt.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>Practice plan: {n} items are open again.</source>
        <translation>Übeplan: {n} Punkte sind wieder offen.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>Practice plan: {n} items more are done.</source>
        <translation>Übeplan: {n} weitere Punkte sind erledigt.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/words.py"/>
        <location filename="../../workbench/handout/sheets/plan_sheet.py"/>
        <source>Practice time</source>
        <translation>Übezeit</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Pre&amp;vious bar</source>
        <translation>V&amp;origer Takt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Pre&amp;vious part</source>
        <translation>Bereich &amp;davor</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Preparing the new pair too late.</source>
        <translation>Das neue Paar zu spät vorbereiten.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Pressing the string down.</source>
        <translation>Die Saite niederdrücken.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Pressing while sliding, so that it squeaks.</source>
        <translation>Beim Gleiten drücken, sodass es quietscht.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/kit/page_preview.py"/>
        <source>Preview</source>
        <translation>Vorschau</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/kit/page_preview.py"/>
        <source>Previous page</source>
        <translation>Vorige Seite</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/printing.py"/>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/handout.py"/>
        <location filename="../../workbench/handout/sheets/booklet.py"/>
        <source>Print on both sides, flipped on the short edge; fold in the middle.</source>
        <translation>Beidseitig drucken, über die kurze Kante gewendet; in der Mitte falten.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Print the &amp;handout …</source>
        <translation>&amp;Arbeitsblatt drucken …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Print the &amp;teacher's sheet …</source>
        <translation>&amp;Lehrerblatt drucken …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/harmony.py"/>
        <source>Printed</source>
        <translation>Gedruckt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/import_dialog.py"/>
        <source>Printed fingers and strings become fixed, and the rest is fingered around them. Without it everything is fingered anew.</source>
        <translation>Gedruckte Finger und Saiten werden festgelegt, das Übrige wird darum herum gegriffen. Ohne dies entsteht der ganze Fingersatz neu.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/finger.py"/>
        <source>Printed in the score and left out</source>
        <translation>In den Noten gedruckt und weggelassen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/printing.py"/>
        <source>Printing</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/scores_dialog.py"/>
        <location filename="../../workbench/ui/window/window.py"/>
        <source>Progress</source>
        <translation>Fortschritt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/rejected.py"/>
        <source>Put at least one note elsewhere, or on another finger.</source>
        <translation>Legen Sie mindestens einen Ton auf einen anderen Platz oder Finger.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/keeper.py"/>
        <source>Put back: {label}</source>
        <translation>Zurückgeholt: {label}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/scores_dialog.py"/>
        <source>Put it in &amp;force</source>
        <translation>In &amp;Kraft setzen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/report_dialog.py"/>
        <source>Put the report on the clipboard</source>
        <translation>Den Bericht in die Zwischenablage kopieren</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/backups_dialog.py"/>
        <source>Put the selected backup in the store's place; what is there is moved aside</source>
        <translation>Die gewählte Sicherung an die Stelle des Speichers setzen; was dort ist, wird beiseitegelegt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/rejected.py"/>
        <source>Put together by hand</source>
        <translation>Selbst zusammengestellt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/new_piece_dialog.py"/>
        <source>Quarter notes a mi&amp;nute</source>
        <translation>Viertel in der Mi&amp;nute</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/marks.py"/>
        <source>Quarter notes a minute from this bar on; 0 takes the mark away</source>
        <translation>Viertel in der Minute ab diesem Takt; 0 nimmt die Angabe weg</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>R</source>
        <translation>R</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/reaches.py"/>
        <source>Reach {reach} mm of {comfort} mm in comfort.</source>
        <translation>Spannweite {reach} mm von bequemen {comfort} mm.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/kit/notice.py"/>
        <source>Read the error report, and keep it as a file</source>
        <translation>Den Fehlerbericht lesen und als Datei sichern</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>Reading the original</source>
        <translation>Das Original wird gelesen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>Reading the original …</source>
        <translation>Das Original wird gelesen …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/import_dialog.py"/>
        <location filename="../../workbench/ui/shelf/dialog.py"/>
        <location filename="../../workbench/ui/window/openers.py"/>
        <source>Reading the score</source>
        <translation>Noten werden gelesen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/scores_dialog.py"/>
        <source>Reading the scores</source>
        <translation>Liest die Noten</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/reading.py"/>
        <source>Reading view of the script</source>
        <translation>Leseansicht des Skripts</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Rece&amp;nt lessons</source>
        <translation>&amp;Zuletzt geöffnet</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/teacher.py"/>
        <source>Rejected:</source>
        <translation>Verworfen:</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/bars/form_words.py"/>
        <source>Relative keys: {key} and {relative} have the same signature, {signs}.</source>
        <translation>Paralleltonarten: {key} und {relative} haben dieselbe Vorzeichnung: {signs}.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <source>Relaxed hand: 1 and 3 on neighbouring frets</source>
        <translation>Locker: 1 und 3 statt 1 und 2</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/why_not.py"/>
        <source>Remark that it is attached to</source>
        <translation>Unterrichtshinweis, an den es gehängt wird</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/page.py"/>
        <location filename="../../workbench/ui/notes/panel.py"/>
        <location filename="../../workbench/ui/window/tour.py"/>
        <source>Remarks</source>
        <translation>Unterrichtshinweise</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/panel.py"/>
        <source>Remarks on this bar</source>
        <translation>Unterrichtshinweise zu diesem Takt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/music_dialog.py"/>
        <source>Remarks stay with their bars. Pins stay where the instrument and the note stay the same. Undo brings all of it back.</source>
        <translation>Unterrichtshinweise bleiben bei ihren Takten. Festlegungen bleiben, wo Instrument und Ton gleich bleiben. „Rückgängig“ stellt alles wieder her.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/panel.py"/>
        <source>Remarks, {bar}</source>
        <translation>Unterrichtshinweise, {bar}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/attach.py"/>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/attach.py"/>
        <source>Remove: {what}</source>
        <translation>Entfernen: {what}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/marks.py"/>
        <source>Repeat</source>
        <translation>Wiederholung</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Repeat &amp;begins here</source>
        <translation>Wiederholung &amp;beginnt hier</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Repeat &amp;ends here</source>
        <translation>Wiederholung &amp;endet hier</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>Repeats, endings or jumps have changed.</source>
        <translation>Wiederholungen, Klammern oder Sprünge sind geändert.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/kit/file_rows.py"/>
        <source>Replace it, or keep it and give the new one another name?</source>
        <translation>Soll sie ersetzt werden, oder bleibt sie und die neue bekommt einen anderen Namen?</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/kit/file_rows.py"/>
        <source>Replace the file?</source>
        <translation>Datei ersetzen?</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>Rest strokes are marked now.</source>
        <translation>Angelegte Anschläge sind jetzt bezeichnet.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>Rest strokes are not marked any more.</source>
        <translation>Angelegte Anschläge sind nicht mehr bezeichnet.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>Restore a note of the original</source>
        <translation>Note des Originals zurückholen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>Return</source>
        <translation>Eingabe</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/items.py"/>
        <source>Review</source>
        <translation>Auffrischen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/why_table.py"/>
        <source>Right</source>
        <translation>Rechts</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/edits.py"/>
        <source>Right finger '{finger}' is not known; choose p, i, m or a.</source>
        <translation>Den rechten Finger „{finger}“ gibt es nicht; wählen Sie p, i, m oder a.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/hand_edits.py"/>
        <source>Right finger {finger}</source>
        <translation>Rechter Finger {finger}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/bar.py"/>
        <source>Right fingers</source>
        <translation>Finger rechts</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/items.py"/>
        <source>Right hand alone on open strings, counting aloud, until it runs by itself.</source>
        <translation>Rechte Hand allein auf leeren Saiten, laut zählen, bis es von selbst läuft.</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>Right hand, {what}: {difference}.</source>
        <translation>Rechte Hand, {what}: {difference}.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>Right hand: {old}, now {new}.</source>
        <translation>Rechte Hand: {old}, jetzt {new}.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>Rings: left out. Arrows: another octave. A stroke after a note: it ends early. Boxes: another voice. Faint: accepted.</source>
        <translation>Ringe: weggelassen. Pfeile: andere Oktave. Strich nach einer Note: Sie endet früher. Kästchen: andere Stimme. Blass: gutgeheißen.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Rushing the open note.</source>
        <translation>Den leeren Ton hetzen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>S</source>
        <translation>S</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <source>S&amp;chool of fingering</source>
        <translation>&amp;Fingersatzschule</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/tour.py"/>
        <source>S&amp;kip the tour</source>
        <translation>Rundgang ü&amp;berspringen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>S&amp;maller text</source>
        <translation>&amp;Text kleiner</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Sa&amp;fe keeping</source>
        <translation>Aufbe&amp;wahren</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Save all in an &amp;archive …</source>
        <translation>Alles in ein &amp;Archiv schreiben …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/exercises.py"/>
        <source>Save as &amp;picture …</source>
        <translation>Als &amp;Bild speichern …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/exercises.py"/>
        <source>Save as so&amp;und …</source>
        <translation>Als Ton&amp;datei speichern …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/exercises.py"/>
        <source>Save the exercise</source>
        <translation>Übung speichern</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/report_dialog.py"/>
        <source>Save the report</source>
        <translation>Bericht speichern</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/exercises.py"/>
        <source>Save the sound</source>
        <translation>Tondatei speichern</translation>
    </message>
    <message>
        <location filename="../../workbench/music/codec.py"/>
        <source>Saved data: {where} should be {wanted} but is {shown}; the data is damaged.</source>
        <translation>Gespeicherte Daten: {where} sollte {wanted} sein, ist aber {shown}; die Daten sind beschädigt.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/codec.py"/>
        <source>Saved data: {where}.{field} is missing; the data is damaged.</source>
        <translation>Gespeicherte Daten: {where}.{field} fehlt; die Daten sind beschädigt.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/teacher.py"/>
        <source>Say</source>
        <translation>Sagen</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/items.py"/>
        <source>Say the note names in time, then play them slowly.</source>
        <translation>Die Tonnamen im Takt sprechen, dann langsam spielen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/export_dialog.py"/>
        <location filename="../../workbench/ui/paper/handout_dialog.py"/>
        <source>Say where the file goes: write a name, or choose one.</source>
        <translation>Geben Sie an, wohin die Datei soll: Schreiben Sie einen Namen oder wählen Sie einen.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>School of fingering: {old}, now {new}.</source>
        <translation>Fingersatzschule: {old}, jetzt {new}.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/view.py"/>
        <location filename="../../workbench/ui/views/grading/scores_dialog.py"/>
        <location filename="../../workbench/ui/window/teaching_tabs.py"/>
        <source>Score</source>
        <translation>Noten</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Score at &amp;100 %</source>
        <translation>Noten bei &amp;100 %</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/bar.py"/>
        <source>Score at 100 %</source>
        <translation>Noten in 100 %</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/bar.py"/>
        <source>Score at 100 % (Ctrl+0)</source>
        <translation>Noten in 100 % (Strg+0)</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/bar.py"/>
        <source>Score larger (Ctrl++, or Ctrl and the wheel)</source>
        <translation>Noten größer (Strg++ oder Strg und Mausrad)</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/bar.py"/>
        <source>Score smaller (Ctrl+-, or Ctrl and the wheel)</source>
        <translation>Noten kleiner (Strg+- oder Strg und Mausrad)</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/teaching_tabs.py"/>
        <source>Score, techniques, practice plan or script</source>
        <translation>Noten, Techniken, Übeplan oder Skript</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/scores_dialog.py"/>
        <location filename="../../workbench/ui/window/openers.py"/>
        <source>Scores ({endings})</source>
        <translation>Noten ({endings})</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/scores_dialog.py"/>
        <source>Scores that print the fingers you would use</source>
        <translation>Noten, in denen die Finger stehen, die Sie nehmen würden</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/scores_dialog.py"/>
        <source>Scores to learn from</source>
        <translation>Noten, aus denen gelernt wird</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/teacher.py"/>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <location filename="../../workbench/ui/window/teaching_tabs.py"/>
        <source>Script</source>
        <translation>Skript</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/view.py"/>
        <source>Script in playing order</source>
        <translation>Skript in Spielfolge</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>Script: the words of {n} bar changed.</source>
        <translation>Skript: Der Text zu {n} Takt ist geändert.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>Script: the words of {n} bars changed.</source>
        <translation>Skript: Der Text zu {n} Takten ist geändert.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/scripts/script.py"/>
        <source>Script: there is no bar {bar} in playing order (it has {count}); remove that edit.</source>
        <translation>Skript: In der Spielfolge gibt es keinen Takt {bar} (sie hat {count}); entfernen Sie diese Änderung.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/pieces.py"/>
        <source>Search the pieces</source>
        <translation>Stücke durchsuchen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/filters.py"/>
        <location filename="../../workbench/ui/views/grading/grades_dialog.py"/>
        <source>Search the shelf</source>
        <translation>Regal durchsuchen</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Searching for the place while the music waits.</source>
        <translation>Die Stelle suchen, während die Musik wartet.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/scope.py"/>
        <source>Section that is meant</source>
        <translation>Gemeinter Teil</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/page.py"/>
        <location filename="../../workbench/teaching/bars/form_words.py"/>
        <location filename="../../workbench/teaching/scripts/script.py"/>
        <source>Section {letter}</source>
        <translation>Teil {letter}</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/words.py"/>
        <source>Section {letter}, {bars}</source>
        <translation>Teil {letter}, {bars}</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>Sections have changed.</source>
        <translation>Teile sind geändert.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/read.py"/>
        <source>Sections: {named}</source>
        <translation>Teile: {named}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/kit/page_preview.py"/>
        <source>See the page larger</source>
        <translation>Seite vergrößern</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/kit/page_preview.py"/>
        <source>See the page smaller</source>
        <translation>Seite verkleinern</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/signs.py"/>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Segno</source>
        <translation>Segno</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/panel.py"/>
        <source>Select a bar with notes first.</source>
        <translation>Wählen Sie zuerst einen Takt mit Tönen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/hand_edits.py"/>
        <source>Select a note first, then give it a left finger.</source>
        <translation>Wählen Sie erst einen Ton, dann geben Sie ihm einen linken Finger.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/hand_edits.py"/>
        <source>Select a note first, then give it a right finger.</source>
        <translation>Wählen Sie erst einen Ton, dann geben Sie ihm einen rechten Finger.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/hand_edits.py"/>
        <source>Select one note first, then move it to another string.</source>
        <translation>Wählen Sie erst einen Ton, dann verlegen Sie ihn auf eine andere Saite.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/neck/view.py"/>
        <source>Selected: {note}.</source>
        <translation>Gewählt: {note}.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/playing_fields.py"/>
        <source>Semitones up, or down where below 0; 0 is as written</source>
        <translation>Halbtöne aufwärts, unter 0 abwärts; 0 ist wie notiert</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/commands.py"/>
        <location filename="../../workbench/ui/writing/marks.py"/>
        <source>Set a repeat</source>
        <translation>Wiederholung setzen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/commands.py"/>
        <source>Set an ending</source>
        <translation>Klammer setzen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/panel.py"/>
        <source>Set the selected fingering beside the present one, or two selected ones beside each other</source>
        <translation>Den gewählten Fingersatz neben den jetzigen stellen oder zwei gewählte nebeneinander</translation>
    </message>
    <message>
        <location filename="../../workbench/store/studio.py"/>
        <source>Setting '{name}'</source>
        <translation>Einstellung „{name}“</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Several notes in a row with the thumb from the side of the nail or the flesh, even and round.</source>
        <translation>Mehrere Töne hintereinander mit dem Daumen, seitlich am Nagel oder mit der Kuppe, gleichmäßig und rund.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/shape.py"/>
        <source>Shape '{text}': '{word}' is no fret; give 0 to {most}, or x for a string that is not played.</source>
        <translation>Griff „{text}“: „{word}“ ist kein Bund; geben Sie 0 bis {most} an oder x für eine Saite, die nicht gespielt wird.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/shape.py"/>
        <source>Shape '{text}': no string is played; give at least one fret.</source>
        <translation>Griff „{text}“: Keine Saite wird gespielt; geben Sie mindestens einen Bund an.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/shape.py"/>
        <source>Shape '{text}': {instrument} has {strings} strings; give one fret for each, from the highest-numbered string to string 1.</source>
        <translation>Griff „{text}“: {instrument} hat {strings} Saiten; geben Sie für jede einen Bund an, von der Saite mit der höchsten Nummer bis zu Saite 1.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/dialog.py"/>
        <source>Shelf</source>
        <translation>Regal</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>Shift with A to G</source>
        <translation>Umschalt mit A bis G</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Short notes turning into loud ones.</source>
        <translation>Kurze Töne werden zu lauten.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Short notes with silence after them; the finger that plays next stops the string.</source>
        <translation>Kurze Töne mit Stille danach; der Finger, der als nächster spielt, stoppt die Saite.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/bar.py"/>
        <source>Show string numbers in circles, also where the score prints none</source>
        <translation>Saitenzahlen in Kreisen zeigen, auch wo die Noten keine haben</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/bar.py"/>
        <source>Show the left hand's fingers, 1 to 4</source>
        <translation>Die Finger der linken Hand zeigen, 1 bis 4</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/bar.py"/>
        <source>Show the right hand's fingers, p i m a</source>
        <translation>Die Finger der rechten Hand zeigen, p i m a</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/bar.py"/>
        <source>Show the tablature under the staff</source>
        <translation>Die Tabulatur unter dem Notensystem zeigen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/next.py"/>
        <location filename="../../workbench/ui/views/techniques/shelf.py"/>
        <source>Side by side: {title}</source>
        <translation>Nebeneinander: {title}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/neck/legend.py"/>
        <source>Signs on the fretboard</source>
        <translation>Zeichen auf dem Griffbrett</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/pair_view.py"/>
        <source>Size and parts of original and arrangement</source>
        <translation>Größe und Bestandteile von Original und Arrangement</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/bar.py"/>
        <source>Size and parts of the score</source>
        <translation>Größe und Bestandteile der Noten</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/bar.py"/>
        <source>Smaller score</source>
        <translation>Kleinere Noten</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/reading.py"/>
        <source>Smaller text (-)</source>
        <translation>Kleinerer Text (-)</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/playing_fields.py"/>
        <source>So far best in {key}; the search goes on.</source>
        <translation>Bisher am besten in {key}; die Suche geht weiter.</translation>
    </message>
    <message>
        <location filename="../../workbench/instrument/table.py"/>
        <source>Soprano ukulele, high G</source>
        <translation>Sopranukulele, hohes G</translation>
    </message>
    <message>
        <location filename="../../workbench/instrument/table.py"/>
        <source>Soprano ukulele, low G</source>
        <translation>Sopranukulele, tiefes G</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/exercises.py"/>
        <source>Sound (*.wav)</source>
        <translation>Tondatei (*.wav)</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/sound_files.py"/>
        <source>Sound as it is played now (*.wav)</source>
        <translation>Klang, wie er jetzt gespielt wird (*.wav)</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/sound_files.py"/>
        <source>Sound as it is played now, packed (*.flac)</source>
        <translation>Klang, wie er jetzt gespielt wird, gepackt (*.flac)</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/harmony.py"/>
        <source>Sounding</source>
        <translation>Klingend</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/shortcut_list.py"/>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>Space</source>
        <translation>Leertaste</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/commands.py"/>
        <source>Spell a note otherwise</source>
        <translation>Ton anders schreiben</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Spell it other&amp;wise</source>
        <translation>Anders sch&amp;reiben</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Squeezing with the thumb in place of the arm's weight.</source>
        <translation>Mit dem Daumen quetschen statt mit dem Gewicht des Arms.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bars/thumbs.py"/>
        <source>Staff</source>
        <translation>Notensystem</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Stealing time from the beat.</source>
        <translation>Dem Schlag Zeit stehlen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/tour.py"/>
        <source>Step {step} of {steps}</source>
        <translation>Schritt {step} von {steps}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/history_dialog.py"/>
        <source>Steps that were undone stay here, fainter, until you change something: then they go. A version that is kept never goes.</source>
        <translation>Rückgängig gemachte Schritte bleiben hier blasser stehen, bis Sie etwas ändern: Dann verschwinden sie. Eine aufbewahrte Fassung verschwindet nie.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/history_dialog.py"/>
        <source>Steps, the newest first</source>
        <translation>Schritte, der neueste zuerst</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/batch.py"/>
        <source>Stopped with {done} of {all} scores done; call it again with --resume to go on.</source>
        <translation>Angehalten, {done} von {all} Partituren sind fertig; rufen Sie es noch einmal mit --resume auf, um weiterzumachen.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Stressing the pickup like a first beat.</source>
        <translation>Den Auftakt wie eine Eins betonen.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/cautions.py"/>
        <source>Stretch well beyond what a {hand} hand spans in comfort in {bars}: begin at a higher fret or with a capo, a minute at a time, and let the thumb give way behind the neck.</source>
        <translation>In {bars} eine Spreizung weit über das hinaus, was bei Handgröße „{hand}“ bequem ist: in einem höheren Bund oder mit Kapodaster beginnen, jeweils eine Minute lang, und den Daumen hinter dem Hals nachgeben lassen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/handout_dialog.py"/>
        <source>Strin&amp;g numbers in circles</source>
        <translation>Saiten&amp;zahlen in Kreisen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/why_table.py"/>
        <source>String</source>
        <translation>Saite</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/commands.py"/>
        <source>String {string} has frets 0 to {most}; choose one of them.</source>
        <translation>Saite {string} hat die Bünde 0 bis {most}; wählen Sie einen davon.</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/shapes/shape.py"/>
        <source>String {string}: fret {fret} is not on {instrument}; give 0 to {playable_frets}.</source>
        <translation>Saite {string}: Bund {fret} gibt es auf {instrument} nicht; geben Sie 0 bis {playable_frets} an.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/player/tuner.py"/>
        <source>String {string}: {note}</source>
        <translation>Saite {string}: {note}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/bar.py"/>
        <source>Strings</source>
        <translation>Saiten</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/harmony.py"/>
        <source>Strings used</source>
        <translation>Gespielte Saiten</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>Strong fingers, the hand where they fall</source>
        <translation>Starke Finger, die Hand, wo sie hinfallen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/panel.py"/>
        <source>Strong words (Ctrl+B)</source>
        <translation>Starke Worte (Strg+B)</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/words.py"/>
        <location filename="../../workbench/handout/sheets/plan_sheet.py"/>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <location filename="../../workbench/ui/shelf/model.py"/>
        <location filename="../../workbench/ui/window/safe_keeping.py"/>
        <source>Student</source>
        <translation>Für wen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Student &amp;groups …</source>
        <translation>&amp;Gruppen …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/groups_dialog.py"/>
        <source>Student groups</source>
        <translation>Gruppen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/filters.py"/>
        <source>Student or group</source>
        <translation>Schüler oder Gruppe</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Student's &amp;pack …</source>
        <translation>Schüler&amp;paket …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/plan/view.py"/>
        <source>Student's grade</source>
        <translation>Stufe des Schülers</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/practice.py"/>
        <source>Student's grade {grade}: give a grade from 0 to 8.</source>
        <translation>Schülerstufe {grade}: Geben Sie eine Stufe von 0 bis 8 an.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/sound_files.py"/>
        <source>Student's pack</source>
        <translation>Schülerpaket</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/lessons.py"/>
        <source>Student: “{line}”</source>
        <translation>Schüler: „{line}“</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/groups_dialog.py"/>
        <source>Students of the group, a name a line</source>
        <translation>Schüler der Gruppe, ein Name pro Zeile</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/groups_dialog.py"/>
        <source>Students on the shelf: {names}.</source>
        <translation>Schüler im Regal: {names}.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/files/text_file.py"/>
        <source>SubRip cues</source>
        <translation>SubRip-Untertitel</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>T</source>
        <translation>T</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>T&amp;ablature</source>
        <translation>Ta&amp;bulatur</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <source>T&amp;empo</source>
        <translation>T&amp;empo</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/import_dialog.py"/>
        <source>T&amp;une</source>
        <translation>&amp;Melodie</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>T&amp;uner tones …</source>
        <translation>Stimm&amp;töne …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bars/thumbs.py"/>
        <location filename="../../workbench/ui/score/bar.py"/>
        <source>Tablature</source>
        <translation>Tabulatur</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/view.py"/>
        <source>Take &amp;back</source>
        <translation>&amp;Zurücknehmen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/easier_dialog.py"/>
        <source>Take an easier or harder version</source>
        <translation>Leichtere oder schwerere Fassung nehmen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/hand_edits.py"/>
        <source>Take another fingering</source>
        <translation>Anderen Fingersatz nehmen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/plan/view.py"/>
        <source>Take back '{item}'</source>
        <translation>Haken bei „{item}“ entfernen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>Take back the last change of the lesson</source>
        <translation>Die letzte Änderung der Lektion zurücknehmen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/page.py"/>
        <location filename="../../workbench/ui/views/script/view.py"/>
        <source>Take back the words for {place}</source>
        <translation>Text für {place} zurücknehmen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>Take back what was decided of the note</source>
        <translation>Zurücknehmen, was über die Note entschieden war</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/grade.py"/>
        <location filename="../../workbench/commands/plan.py"/>
        <location filename="../../workbench/handout/sheets/pack_words.py"/>
        <location filename="../../workbench/teaching/planning/files.py"/>
        <source>Take care</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/material.py"/>
        <location filename="../../workbench/handout/sheets/book.py"/>
        <location filename="../../workbench/handout/sheets/grip_sheet.py"/>
        <location filename="../../workbench/handout/sheets/plan_sheet.py"/>
        <source>Take care.</source>
        <translation>Vorsicht.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/panel.py"/>
        <source>Take fingering &amp;{number}</source>
        <translation>Fingersatz &amp;{number} nehmen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/safe_keeping.py"/>
        <source>Take in an archive</source>
        <translation>Archiv aufnehmen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/estimate_row.py"/>
        <source>Take it</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/learning.py"/>
        <source>Take it &amp;back</source>
        <translation>&amp;Zurücknehmen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/why_not.py"/>
        <source>Take it as &amp;pins</source>
        <translation>So &amp;festlegen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/panel.py"/>
        <source>Take off a remark</source>
        <translation>Von einem Hinweis entfernen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/dialogs.py"/>
        <source>Take the &amp;present grip</source>
        <translation>&amp;Aktuellen Griff nehmen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/estimate_row.py"/>
        <location filename="../../workbench/ui/views/grading/view.py"/>
        <source>Take the estimate as my word</source>
        <translation>Schätzung als mein Urteil übernehmen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/estimate_row.py"/>
        <source>Take the estimate as your own grade of this lesson</source>
        <translation>Die Schätzung als Ihre eigene Stufe für diese Lektion übernehmen</translation>
    </message>
    <message>
        <location filename="../../workbench/store/learning.py"/>
        <source>Take the fit back</source>
        <translation>Anpassung zurückgenommen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/fit_buttons.py"/>
        <source>Take the last fit &amp;back</source>
        <translation>Letzte Anpassung &amp;zurücknehmen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Take the other f&amp;ingering</source>
        <translation>&amp;Anderen Fingersatz nehmen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/attach.py"/>
        <source>Take this off the remark; undo brings it back</source>
        <translation>Vom Hinweis entfernen; „Rückgängig“ bringt es zurück</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/page.py"/>
        <location filename="../../workbench/ui/views/script/view.py"/>
        <source>Take your words back: the bar says again what it said</source>
        <translation>Eigenen Text zurücknehmen: Im Takt steht wieder, was vorher dort stand</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/techniques/news.py"/>
        <source>Takes up again {again}; adds {added}.</source>
        <translation>Greift auf: {again}; dazu kommt: {added}.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/safe_keeping.py"/>
        <source>Taking in the archive</source>
        <translation>Das Archiv wird aufgenommen</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/pack_words.py"/>
        <source>Tap a bar to hear it and what follows. With Loop on, tap the first bar, then the last. Keys: Space plays and stops, arrows go to a bar, Enter plays it, L loops, plus and minus change the tempo.</source>
        <translation>Tippe auf einen Takt, um ihn und was folgt zu hören. Mit Schleife: erst auf den ersten Takt tippen, dann auf den letzten. Tasten: Leertaste spielt und hält an, Pfeile gehen zu einem Takt, Eingabe spielt ihn, L schaltet die Schleife, Plus und Minus ändern das Tempo.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/attach.py"/>
        <source>Taught in another lesson</source>
        <translation>In einer anderen Lektion behandelt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/next.py"/>
        <source>Taught last: '{title}'.</source>
        <translation>Zuletzt unterrichtet: „{title}“.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/exercises.py"/>
        <source>Te&amp;mpo</source>
        <translation>Te&amp;mpo</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Te&amp;mpo …</source>
        <translation>Te&amp;mpo …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/shelf.py"/>
        <source>Teach &amp;next, or side by side</source>
        <translation>Als &amp;Nächstes oder nebeneinander</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/dialog.py"/>
        <source>Teach next</source>
        <translation>Als Nächstes</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <source>Techni&amp;ques</source>
        <translation>Techni&amp;ken</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/filters.py"/>
        <source>Technique</source>
        <translation>Technik</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/techniques/catalogue.py"/>
        <source>Technique '{name}' is not in the catalogue; choose one that it lists.</source>
        <translation>Die Technik „{name}“ steht nicht im Katalog; wählen Sie eine, die er aufführt.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/model.py"/>
        <location filename="../../workbench/ui/window/teaching_tabs.py"/>
        <source>Techniques</source>
        <translation>Techniken</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>Techniques added: {names}.</source>
        <translation>Neue Techniken: {names}.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/view.py"/>
        <source>Techniques in the piece</source>
        <translation>Techniken im Stück</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>Techniques taken out: {names}.</source>
        <translation>Herausgenommene Techniken: {names}.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/tour.py"/>
        <source>Techniques, practice plan, script</source>
        <translation>Techniken, Übeplan, Skript</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/view.py"/>
        <source>Techniques, what is new, form and harmony</source>
        <translation>Techniken, Neues, Form und Harmonik</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/material.py"/>
        <source>Techniques:</source>
        <translation>Techniken:</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/lessons.py"/>
        <source>Techniques: “{line}”</source>
        <translation>Techniken: „{line}“</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/bar.py"/>
        <source>Tell the voices apart by their ink</source>
        <translation>Die Stimmen farblich unterscheiden</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/words.py"/>
        <location filename="../../workbench/handout/sheets/pack_words.py"/>
        <location filename="../../workbench/handout/sheets/plan_sheet.py"/>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <location filename="../../workbench/ui/views/plan/table.py"/>
        <location filename="../../workbench/ui/writing/marks.py"/>
        <source>Tempo</source>
        <translation>Tempo</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Tempo &amp;trainer …</source>
        <translation>Tempot&amp;rainer …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/exercises.py"/>
        <source>Tempo of the exercise</source>
        <translation>Tempo der Übung</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/edits.py"/>
        <source>Tempo percent</source>
        <translation>Tempo in Prozent</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/charts/lesson.py"/>
        <source>Tempo reached (%)</source>
        <translation>Erreichtes Tempo (%)</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/player/trainer.py"/>
        <source>Tempo trainer</source>
        <translation>Tempotrainer</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/player/bar.py"/>
        <source>Tempo trainer: faster by steps; Sound, Tempo trainer sets them</source>
        <translation>Tempotrainer: schrittweise schneller; die Schritte stehen unter Klang, Tempotrainer</translation>
    </message>
    <message>
        <location filename="../../workbench/sound/timing.py"/>
        <source>Tempo {percent:g} %: choose {slowest} to {fastest} percent of the written one.</source>
        <translation>Tempo {percent:g} %: Wählen Sie {slowest} bis {fastest} Prozent des notierten Tempos.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/practice.py"/>
        <source>Tempo {percent} %: aim at 20 to 200 % of the written tempo.</source>
        <translation>Tempo {percent} %: Wählen Sie 20 bis 200 % des notierten Tempos.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/player/bar.py"/>
        <source>Tempo, percent of the written one</source>
        <translation>Tempo, Prozent des notierten</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/signs.py"/>
        <source>Tempo: give {slow} to {fast} quarter notes a minute.</source>
        <translation>Tempo: Geben Sie {slow} bis {fast} Viertel je Minute an.</translation>
    </message>
    <message>
        <location filename="../../workbench/instrument/table.py"/>
        <source>Tenor guitar (C G D A)</source>
        <translation>Tenorgitarre (C G D A)</translation>
    </message>
    <message>
        <location filename="../../workbench/instrument/table.py"/>
        <source>Tenor ukulele, high G</source>
        <translation>Tenorukulele, hohes G</translation>
    </message>
    <message>
        <location filename="../../workbench/instrument/table.py"/>
        <source>Tenor ukulele, low G</source>
        <translation>Tenorukulele, tiefes G</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/report_dialog.py"/>
        <source>Text (*.txt)</source>
        <translation>Text (*.txt)</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/verdict.py"/>
        <source>That cannot be played: bar {bars} has no fingering that way; undo takes it back.</source>
        <translation>Das ist nicht spielbar: Takt {bars} hat so keinen Fingersatz; Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <location filename="../../workbench/sound/tracks.py"/>
        <source>That is more than three hours of sound; choose fewer bars.</source>
        <translation>Das sind mehr als drei Stunden Klang; bitte weniger Takte wählen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/window.py"/>
        <source>That is no score this program reads; drop a MusicXML (.musicxml, .xml, .mxl), MIDI or ABC file.</source>
        <translation>Diese Noten kann das Programm nicht lesen; ziehen Sie eine MusicXML- (.musicxml, .xml, .mxl), MIDI- oder ABC-Datei hierher.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/meters.py"/>
        <source>That makes more than {most} bars; choose a longer bar.</source>
        <translation>Das ergibt mehr als {most} Takte; wählen Sie einen längeren Takt.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/signs.py"/>
        <source>That moment lies outside the bar; choose one inside.</source>
        <translation>Dieser Zeitpunkt liegt außerhalb des Taktes; wählen Sie einen innerhalb.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/notes.py"/>
        <source>That moment lies outside {bar}; choose one inside.</source>
        <translation>Dieser Zeitpunkt liegt außerhalb von {bar}; wählen Sie einen innerhalb.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/line.py"/>
        <source>That note is no longer in the piece; select another one.</source>
        <translation>Dieser Ton ist nicht mehr im Stück; wählen Sie einen anderen aus.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/neck/view.py"/>
        <source>That place does not sound this note; use a dashed ring.</source>
        <translation>Dort klingt dieser Ton nicht; nehmen Sie einen gestrichelten Ring.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/scripts/words.py"/>
        <source>That was {title}.</source>
        <translation>Das war {title}.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>The &amp;original, then this arrangement</source>
        <translation>Das &amp;Original, dann diese Bearbeitung</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/report_dialog.py"/>
        <source>The &amp;report</source>
        <translation>Der &amp;Bericht</translation>
    </message>
    <message>
        <location filename="../../workbench/store/backups.py"/>
        <source>The backup cannot be put in place of {file} ({fault}); make room or change the folder's rights.</source>
        <translation>Die Sicherung lässt sich nicht an die Stelle von {file} setzen ({fault}); schaffen Sie Platz oder ändern Sie die Rechte des Ordners.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/told.py"/>
        <source>The backup is in place.</source>
        <translation>Die Sicherung ist eingesetzt.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/backup.py"/>
        <location filename="../../workbench/ui/keeping/backups_dialog.py"/>
        <source>The backup is {path}.</source>
        <translation>Die Sicherung ist {path}.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/backups.py"/>
        <source>The backup {path} is damaged itself ({what}); choose another one.</source>
        <translation>Die Sicherung {path} ist selbst beschädigt ({what}); wählen Sie eine andere.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bars/panel.py"/>
        <source>The bars are measured when they are fingered.</source>
        <translation>Die Takte werden gemessen, sobald der Fingersatz fertig ist.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bars/panel.py"/>
        <source>The bars in playing order with their marks</source>
        <translation>Die Takte in Spielfolge mit ihren Zeichen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bars/panel.py"/>
        <source>The bars in written order with their marks</source>
        <translation>Die Takte in notierter Folge mit ihren Zeichen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/sound.py"/>
        <source>The bars of the original are no longer those of this lesson; it cannot be played against it.</source>
        <translation>Die Takte des Originals sind nicht mehr die dieser Stunde; es lässt sich nicht dagegen spielen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>The bars of the original are no longer those of this lesson; they cannot be set under each other.</source>
        <translation>Die Takte des Originals sind nicht mehr die dieser Lektion; sie lassen sich nicht untereinandersetzen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/safe_keeping.py"/>
        <source>The bin is empty.</source>
        <translation>Der Papierkorb ist leer.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/bars/form_words.py"/>
        <source>The chords met most: {chords}.</source>
        <translation>Die häufigsten Akkorde: {chords}.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/cluster.py"/>
        <source>The cluster at {address} has no worker that can use this program; start 'dask worker' in an environment where it is installed.</source>
        <translation>Der Verbund unter {address} hat keinen Helfer, der dieses Programm benutzen kann; 'dask worker' in einer Umgebung starten, in der es eingerichtet ist.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/cluster.py"/>
        <source>The cluster at {address} went away; what was done is kept: start the cluster and call the batch again with --resume.</source>
        <translation>Der Verbund unter {address} ist weggefallen; was fertig war, bleibt: Den Verbund starten und den Stapel mit --resume noch einmal aufrufen.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/demo.py"/>
        <source>The demo pieces are missing; they belong in {folder}: install the program from its complete folder.</source>
        <translation>Die Beispielstücke fehlen; sie gehören in {folder}: Installieren Sie das Programm aus seinem vollständigen Ordner.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/reading.py"/>
        <location filename="../../workbench/ui/views/script/view.py"/>
        <source>The end</source>
        <translation>Ende</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/scores_dialog.py"/>
        <source>The engine turns its weights towards what these scores print: ten fingers at least, better some pages. Only lessons on instruments of the same size change, and fingers that are fixed stay as they are.</source>
        <translation>Das Programm richtet seine Gewichte nach dem, was in diesen Noten steht: mindestens zehn Finger, besser einige Seiten. Nur Lektionen auf Instrumenten gleicher Größe ändern sich, und festgelegte Finger bleiben, wie sie sind.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/view.py"/>
        <source>The estimate stands beside your word and never changes it.</source>
        <translation>Die Schätzung steht neben Ihrem Urteil und ändert es nie.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/exercises.py"/>
        <source>The exercise is a remark on its bar now.</source>
        <translation>Die Übung steht jetzt als Unterrichtshinweis an ihrem Takt.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/exercises.py"/>
        <source>The exercise is written: {path}</source>
        <translation>Die Übung ist gespeichert: {path}</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/one_sentence.py"/>
        <source>The file</source>
        <translation>Die Datei</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/handout_dialog.py"/>
        <source>The file is written: {path}</source>
        <translation>Die Datei ist gespeichert: {path}</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The finger comes to rest on the next string, for a fuller melody note.</source>
        <translation>Der Finger kommt auf der nächsten Saite zur Ruhe, für einen volleren Melodieton.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/neck/moment_words.py"/>
        <location filename="../../workbench/ui/views/page.py"/>
        <source>The fingering is being worked out …</source>
        <translation>Der Fingersatz wird berechnet …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <source>The fingering is being worked out.</source>
        <translation>Der Fingersatz wird berechnet.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/handout_dialog.py"/>
        <location filename="../../workbench/ui/window/openers.py"/>
        <location filename="../../workbench/ui/window/teaching_tabs.py"/>
        <source>The fingering is still being worked out; try again in a moment.</source>
        <translation>Der Fingersatz wird noch berechnet; versuchen Sie es gleich noch einmal.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/learning.py"/>
        <source>The fingering that '{title}' prints is for another instrument than the {instrument}; choose that one, or leave the score out.</source>
        <translation>Der Fingersatz, der in „{title}“ gedruckt ist, gilt einem anderen Instrument ({instrument} ist gewählt); wählen Sie jenes, oder lassen Sie die Noten weg.</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>The fingering that the score prints is for another instrument than the {instrument} and is left out.</source>
        <translation>Der Fingersatz, den die Noten drucken, gilt einem anderen Instrument als dem gewählten ({instrument}) und entfällt.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/files/passage.py"/>
        <source>The first bar comes after the last; choose them in order.</source>
        <translation>Der erste Takt kommt nach dem letzten; wählen Sie sie der Reihe nach.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The first beat is felt, not played.</source>
        <translation>Der erste Schlag wird gefühlt, nicht gespielt.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The first finger lies across all strings, close to the fret, straight and turned to its side.</source>
        <translation>Der erste Finger liegt über allen Saiten, nah am Bundstab, gerade und zur Seite gedreht.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/sectioning.py"/>
        <source>The first section begins with the piece; move where the next begins.</source>
        <translation>Der erste Teil beginnt mit dem Stück; verschieben Sie den Anfang des nächsten.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/sectioning.py"/>
        <source>The first section has none before it to join; give it a letter.</source>
        <translation>Vor dem ersten Teil gibt es keinen, mit dem er verbunden werden könnte; geben Sie ihm einen Buchstaben.</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/app.py"/>
        <source>The fonts that belong to the program are missing from resources/fonts; install it again.</source>
        <translation>Die Schriften, die zum Programm gehören, fehlen in resources/fonts; installieren Sie es neu.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/scripts/words.py"/>
        <source>The form: {form}</source>
        <translation>Die Form: {form}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/tour.py"/>
        <source>The fretboard</source>
        <translation>Das Griffbrett</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/easier_dialog.py"/>
        <source>The fullest that asks no more than this grade is chosen.</source>
        <translation>Gewählt ist die vollste, die nicht mehr als diese Stufe verlangt.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/easier_dialog.py"/>
        <source>The fullest version that asks no more than this is chosen</source>
        <translation>Gewählt wird die vollste Fassung, die nicht mehr verlangt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/dialogs.py"/>
        <source>The grip of the selected note or bar on the fretboard</source>
        <translation>Der Griff des gewählten Tons oder Takts auf dem Griffbrett</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/panel.py"/>
        <source>The grip {grip}.</source>
        <translation>Der Griff {grip}.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The hand drifting back to the nut as soon as an open string comes.</source>
        <translation>Die Hand wandert zum Sattel zurück, sobald eine leere Saite kommt.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>The hand is not relaxed any more.</source>
        <translation>Die Hand ist nicht mehr locker.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>The hand is relaxed now: 1 and 3 on neighbouring frets.</source>
        <translation>Die Hand ist jetzt locker: 1 und 3 in benachbarten Bünden.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The hand jumps over a string and must land without looking.</source>
        <translation>Die Hand springt über eine Saite und muss ohne Hinsehen landen.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The hand plays in a higher position, where frets lie closer together.</source>
        <translation>Die Hand spielt in einer höheren Lage, wo die Bünde enger liegen.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The hand stays in the second, third or fourth position, each finger over a fret of its own.</source>
        <translation>Die Hand bleibt in der zweiten, dritten oder vierten Lage, jeder Finger über seinem eigenen Bund.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The hand travels while an open string sounds, so that no one hears it move.</source>
        <translation>Die Hand wandert, während eine leere Saite klingt, sodass niemand die Bewegung hört.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/handout_dialog.py"/>
        <source>The handout is made: {n} page, {path}</source>
        <translation>Das Arbeitsblatt ist fertig: {n} Seite, {path}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/handout_dialog.py"/>
        <source>The handout is made: {n} pages, {path}</source>
        <translation>Das Arbeitsblatt ist fertig: {n} Seiten, {path}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/estimate_row.py"/>
        <location filename="../../workbench/ui/views/grading/view.py"/>
        <source>The handout says {grade}.</source>
        <translation>Auf dem Arbeitsblatt steht {grade}.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/grade.py"/>
        <source>The handout says {printed}; the estimate is {now} now. The printed grade stays until you change it.</source>
        <translation>Auf dem Arbeitsblatt steht {printed}; die Schätzung ist jetzt {now}. Die gedruckte Stufe bleibt, bis Sie sie ändern.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/arrangement.py"/>
        <source>The instrument does not have this note in that octave up to fret {fret}.</source>
        <translation>Das Instrument hat diese Note in dieser Oktave bis Bund {fret} nicht.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/arrangement.py"/>
        <source>The instrument has this note in no octave up to fret {fret}.</source>
        <translation>Das Instrument hat diese Note bis Bund {fret} in keiner Oktave.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/telling/warnings.py"/>
        <source>The key signature goes to and fro from bar {first} to bar {last}; {key} is kept there.</source>
        <translation>Die Vorzeichnung wechselt von Takt {first} bis Takt {last} hin und her; dort bleibt {key}.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/keeper.py"/>
        <source>The last change is not saved yet; it is tried again.</source>
        <translation>Die letzte Änderung ist noch nicht gespeichert; es wird weiter versucht.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/leaving.py"/>
        <source>The last change is not saved. Close again to leave all the same: it is written aside and offered at the next start.</source>
        <translation>Die letzte Änderung ist nicht gespeichert. Schließen Sie noch einmal, um trotzdem zu gehen: Sie ist beiseitegelegt und wird beim nächsten Start angeboten.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/told.py"/>
        <source>The last changes of {n} lesson are not in it: {titles}.</source>
        <translation>Die letzten Änderungen von {n} Lektion sind nicht darin: {titles}.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/told.py"/>
        <source>The last changes of {n} lessons are not in it: {titles}.</source>
        <translation>Die letzten Änderungen von {n} Lektionen sind nicht darin: {titles}.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/techniques/exercises.py"/>
        <source>The left hand of {bar} alone: {n} grip, set all fingers together, press, let go, and on to the next without looking.</source>
        <translation>Die linke Hand von {bar} allein: {n} Griff, alle Finger zugleich aufsetzen, drücken, loslassen und ohne Hinsehen weiter zum nächsten.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/techniques/exercises.py"/>
        <source>The left hand of {bar} alone: {n} grips, set all fingers together, press, let go, and on to the next without looking.</source>
        <translation>Die linke Hand von {bar} allein: {n} Griffe, alle Finger zugleich aufsetzen, drücken, loslassen und ohne Hinsehen weiter zum nächsten.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/lengths.py"/>
        <location filename="../../workbench/music/edits/notes.py"/>
        <source>The length chosen ({value}) would run past the last bar; add a bar first.</source>
        <translation>Die gewählte Länge ({value}) ginge über den letzten Takt hinaus; fügen Sie zuerst einen Takt hinzu.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/easier_dialog.py"/>
        <source>The lesson has changed meanwhile; open this window again.</source>
        <translation>Die Lektion hat sich inzwischen geändert; öffnen Sie dieses Fenster noch einmal.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/versions_dialog.py"/>
        <source>The lesson is as in '{name}' again; undo takes it back.</source>
        <translation>Die Lektion ist wieder wie in „{name}“; „Rückgängig“ nimmt es zurück.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/keeper.py"/>
        <source>The lesson is saved now.</source>
        <translation>Die Lektion ist jetzt gespeichert.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/trouble_dialog.py"/>
        <source>The lesson store cannot be opened</source>
        <translation>Der Lektionsspeicher lässt sich nicht öffnen</translation>
    </message>
    <message>
        <location filename="../../workbench/store/opening.py"/>
        <source>The lesson store {file} cannot be opened ({fault}); check the folder, or name another place in {variable}.</source>
        <translation>Der Lektionsspeicher {file} kann nicht geöffnet werden ({fault}); prüfen Sie den Ordner oder nennen Sie in {variable} einen anderen Ort.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/opening.py"/>
        <source>The lesson store {file} is a folder; name a file in it.</source>
        <translation>Der Lektionsspeicher {file} ist ein Ordner; nennen Sie eine Datei darin.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/opening.py"/>
        <source>The lesson store {file} is empty: what was in it is lost, or it was never made. Restore a backup, or delete the file to start a new store.</source>
        <translation>Der Lektionsspeicher {file} ist leer: Sein Inhalt ist verloren, oder er wurde nie angelegt. Stellen Sie eine Sicherung wieder her, oder löschen Sie die Datei, um einen neuen zu beginnen.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/opening.py"/>
        <source>The lesson store {file} is to be brought from {found} to {known}, but no copy of it can be kept beside it ({fault}); make room or change the folder's rights.</source>
        <translation>Der Lektionsspeicher {file} soll von {found} auf {known} gebracht werden, aber daneben lässt sich keine Kopie ablegen ({fault}); schaffen Sie Platz oder ändern Sie die Rechte des Ordners.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/refusals.py"/>
        <source>The lesson store {place} cannot be opened for writing; check that its folder is there and may be written to, or name another place in PLUCKWRIGHT_DB.</source>
        <translation>Der Lektionsspeicher {place} kann nicht zum Schreiben geöffnet werden; prüfen Sie, ob sein Ordner da ist und beschrieben werden darf, oder nennen Sie in PLUCKWRIGHT_DB einen anderen Ort.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/refusals.py"/>
        <source>The lesson store {place} cannot be reached; check the server and the network and try again.</source>
        <translation>Der Lektionsspeicher {place} ist nicht erreichbar; prüfen Sie Server und Netz und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/refusals.py"/>
        <source>The lesson store {place} cannot be read or written, for the disk reports an error, and nothing was changed; check the disk and its free room.</source>
        <translation>Der Lektionsspeicher {place} kann nicht gelesen oder geschrieben werden, weil der Datenträger einen Fehler meldet, und nichts wurde geändert; prüfen Sie den Datenträger und seinen freien Platz.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/refusals.py"/>
        <source>The lesson store {place} cannot grow, for the disk is full, and nothing was changed; make room and try again.</source>
        <translation>Der Lektionsspeicher {place} kann nicht wachsen, weil der Datenträger voll ist, und nichts wurde geändert; schaffen Sie Platz und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/refusals.py"/>
        <source>The lesson store {place} is being written by another program just now; close the other one or try again in a moment.</source>
        <translation>In den Lektionsspeicher {place} schreibt gerade ein anderes Programm; schließen Sie es oder versuchen Sie es gleich noch einmal.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/backups.py"/>
        <source>The lesson store {place} is damaged ({what}); restore a backup: Lesson, Safe keeping, Backups.</source>
        <translation>Der Lektionsspeicher {place} ist beschädigt ({what}); stellen Sie eine Sicherung wieder her: Lektion, Aufbewahren, Sicherungen.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/refusals.py"/>
        <source>The lesson store {place} is damaged and was left as it is; put a copy of it back, or move it away to start a new one.</source>
        <translation>Der Lektionsspeicher {place} ist beschädigt und wurde nicht angetastet; spielen Sie eine Kopie zurück oder verschieben Sie ihn, um einen neuen zu beginnen.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/refusals.py"/>
        <source>The lesson store {place} is no lesson store (or is damaged) and was left as it is; put a copy of it back, or name another place in PLUCKWRIGHT_DB.</source>
        <translation>Der Lektionsspeicher {place} ist kein Lektionsspeicher (oder beschädigt) und wurde nicht angetastet; spielen Sie eine Kopie zurück oder nennen Sie in PLUCKWRIGHT_DB einen anderen Ort.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/backups.py"/>
        <source>The lesson store {place} is older than its backup of {day}: changes are missing in it. Look at the backups: Lesson, Safe keeping, Backups.</source>
        <translation>Der Lektionsspeicher {place} ist älter als seine Sicherung vom {day}: Es fehlen Änderungen darin. Sehen Sie nach den Sicherungen: Lektion, Aufbewahren, Sicherungen.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/backup.py"/>
        <source>The lesson store {place} is sound.</source>
        <translation>Der Lektionsspeicher {place} ist in Ordnung.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/refusals.py"/>
        <source>The lesson store {place} may not be read or written; change the rights of the file and its folder, or name another place in PLUCKWRIGHT_DB.</source>
        <translation>Der Lektionsspeicher {place} darf nicht gelesen oder geschrieben werden; ändern Sie die Rechte der Datei und ihres Ordners oder nennen Sie in PLUCKWRIGHT_DB einen anderen Ort.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/refusals.py"/>
        <source>The lesson store {place} may only be read, so nothing was saved; change the rights of the file and its folder, or name another place in PLUCKWRIGHT_DB.</source>
        <translation>Der Lektionsspeicher {place} ist schreibgeschützt, deshalb wurde nichts gespeichert; ändern Sie die Rechte der Datei und ihres Ordners oder nennen Sie in PLUCKWRIGHT_DB einen anderen Ort.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/opening.py"/>
        <source>The lesson store {place} was written by a newer version of the program; it can be read here and is left as it is. Update the program to work on it.</source>
        <translation>Der Lektionsspeicher {place} wurde von einer neueren Version des Programms geschrieben; er kann hier gelesen werden und bleibt, wie er ist. Aktualisieren Sie das Programm, um daran zu arbeiten.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/attach.py"/>
        <source>The lesson this remark leads to is no longer on the shelf.</source>
        <translation>Die Lektion, auf die dieser Hinweis verweist, ist nicht mehr im Regal.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/attach.py"/>
        <source>The lesson this remark leads to is no longer on the shelf; point to another one, or remove the link.</source>
        <translation>Die Lektion, auf die dieser Hinweis verweist, ist nicht mehr im Regal; wählen Sie eine andere oder entfernen Sie den Verweis.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/keeper.py"/>
        <source>The lesson was changed in another window meanwhile; choose which state stands.</source>
        <translation>Die Lektion wurde inzwischen in einem anderen Fenster geändert; wählen Sie, welcher Stand gilt.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/keeper.py"/>
        <source>The lesson was changed in another window too; both changes are kept.</source>
        <translation>Die Lektion wurde auch in einem anderen Fenster geändert; beide Änderungen sind behalten.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/keeper.py"/>
        <source>The lesson was changed in another window; its newest state is shown now. Look at it, then try again.</source>
        <translation>Die Lektion wurde in einem anderen Fenster geändert; jetzt wird ihr neuester Stand gezeigt. Sehen Sie ihn an und versuchen Sie es dann noch einmal.</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>The little finger on fret three</source>
        <translation>Der kleine Finger im dritten Bund</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The lower note late.</source>
        <translation>Der untere Ton kommt zu spät.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/calibrate.py"/>
        <source>The model is as shipped; grade pieces of your own to fit it to your judgement.</source>
        <translation>Das Modell ist wie ausgeliefert; stufen Sie eigene Stücke ein, um es an Ihr Urteil anzupassen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/strip.py"/>
        <location filename="../../workbench/ui/views/script/page.py"/>
        <source>The music in notes and tablature</source>
        <translation>Die Musik in Noten und Tabulatur</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The music is in a minor key here; listen how its colour and its chords change.</source>
        <translation>Die Musik steht hier in Moll; hören, wie sich Farbe und Akkorde ändern.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/scores.py"/>
        <source>The music of {what} is missing in the lesson store.</source>
        <translation>Die Noten zu {what} fehlen im Lektionsspeicher.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>The music was corrected in this lesson, so it is not laid anew from its original; correct single notes in the Music menu.</source>
        <translation>Die Musik wurde in dieser Lektion korrigiert und wird darum nicht neu aus dem Original gelegt; korrigieren Sie einzelne Noten im Menü Musik.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/pack_words.py"/>
        <source>The music, bar by bar</source>
        <translation>Die Musik, Takt für Takt</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The note arriving on the beat.</source>
        <translation>Der Ton landet auf dem Schlag.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/lengths.py"/>
        <source>The note does not sound there; choose a moment while it is held.</source>
        <translation>Der Ton klingt dort nicht; wählen Sie einen Zeitpunkt, an dem er gehalten wird.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The number or kind of beats changes from one bar to the next.</source>
        <translation>Zahl oder Art der Schläge ändert sich von einem Takt zum nächsten.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>The original, then this arrangement</source>
        <translation>Das Original, dann dieses Arrangement</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/playing_fields.py"/>
        <source>The part that is the bass; what is neither is inner</source>
        <translation>Die Stimme, die der Bass ist; was keines von beiden ist, gilt als Mittelstimme</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/playing_fields.py"/>
        <source>The part that is the tune; all else lies below it</source>
        <translation>Die Stimme, die die Melodie ist; alles andere liegt darunter</translation>
    </message>
    <message>
        <location filename="../../workbench/music/telling/warnings.py"/>
        <source>The parts have different numbers of bars; the missing ones are rests.</source>
        <translation>Die Parts haben verschieden viele Takte; die fehlenden sind Pausen.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The passage is played again and ends otherwise the second time; see the leap before it comes.</source>
        <translation>Die Stelle wird noch einmal gespielt und endet beim zweiten Mal anders; den Sprung vorher sehen.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/bar_names.py"/>
        <source>The pickup</source>
        <translation>Der Auftakt</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/bars.py"/>
        <source>The pickup cannot be written again; choose bars after it.</source>
        <translation>Der Auftakt kann nicht noch einmal geschrieben werden; wählen Sie Takte danach.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/bars.py"/>
        <source>The pickup comes first; put the bar after it.</source>
        <translation>Der Auftakt steht am Anfang; setzen Sie den Takt danach ein.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/meters.py"/>
        <source>The pickup is not shorter than a bar of {beats}/{unit}; shorten it first.</source>
        <translation>Der Auftakt ist nicht kürzer als ein {beats}/{unit}-Takt; kürzen Sie ihn zuerst.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/files/passage.py"/>
        <source>The picture would be {width} by {height} pixels; choose fewer bars or a lower resolution.</source>
        <translation>Das Bild wäre {width} mal {height} Pixel groß; wählen Sie weniger Takte oder eine geringere Auflösung.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/bars/form_words.py"/>
        <location filename="../../workbench/teaching/scripts/script.py"/>
        <source>The piece</source>
        <translation>Das Stück</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/files/passage.py"/>
        <source>The piece has {n} bars; choose others.</source>
        <translation>Das Stück hat {n} Takte; wählen Sie andere.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/signs.py"/>
        <source>The piece needs a tempo at its beginning; give one.</source>
        <translation>Das Stück braucht am Anfang ein Tempo; geben Sie eines an.</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/charts/lesson.py"/>
        <source>The plan by days</source>
        <translation>Der Plan nach Tagen</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/plan_grid.py"/>
        <source>The plan goes on to day {last}.</source>
        <translation>Der Plan geht bis Tag {last} weiter.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/pack_words.py"/>
        <source>The plan goes on to day {last}; what is ticked is remembered here.</source>
        <translation>Der Plan geht bis Tag {last}; was abgehakt ist, bleibt hier gemerkt.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/printing.py"/>
        <source>The printer does not answer, and nothing was printed; check it and try again.</source>
        <translation>Der Drucker antwortet nicht, es wurde nichts gedruckt; prüfen Sie ihn und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/session.py"/>
        <source>The program made a mistake ({kind}); your lesson is kept. Help, Error report shows what happened.</source>
        <translation>Das Programm hat einen Fehler gemacht ({kind}); Ihre Lektion ist gesichert. „Hilfe, Fehlerbericht“ zeigt, was geschehen ist.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/report_dialog.py"/>
        <source>The program made a mistake of its own. Your lesson is kept up to the last change, and you can go on working; if the same thing happens again, close the window and open it anew. What follows tells those who mend the program where it went wrong.</source>
        <translation>Dem Programm ist selbst ein Fehler unterlaufen. Ihre Lektion ist bis zur letzten Änderung gesichert, Sie können weiterarbeiten; geschieht dasselbe noch einmal, schließen Sie das Fenster und öffnen Sie es neu. Das Folgende zeigt denen, die das Programm pflegen, wo der Fehler lag.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/panel.py"/>
        <source>The remark in full</source>
        <translation>Der ganze Hinweis</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/music_changed.py"/>
        <source>The remark “{words}” speaks of its bar from now on.</source>
        <translation>Der Hinweis „{words}“ gilt von jetzt an für seinen ganzen Takt.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/music_changed.py"/>
        <source>The remark “{words}” went with its bar.</source>
        <translation>Der Hinweis „{words}“ entfiel mit seinem Takt.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/edits.py"/>
        <source>The remark's last bar comes before its first one, or is not in the piece.</source>
        <translation>Der letzte Takt des Hinweises kommt vor seinem ersten oder steht nicht im Stück.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/report_dialog.py"/>
        <source>The report</source>
        <translation>Der Bericht</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/report_dialog.py"/>
        <source>The report holds the versions of the program and the system, the size of the lesson and where the program went wrong, but no names and no words of your lessons. Nothing is sent: save it or copy it, and give it to whoever looks after the program.</source>
        <translation>Der Bericht enthält die Versionen des Programms und des Systems, die Größe der Lektion und die Stelle, an der das Programm versagte, aber keine Namen und keinen Text Ihrer Lektionen. Nichts wird gesendet: Speichern oder kopieren Sie ihn und geben Sie ihn an die Person, die das Programm betreut.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/report_dialog.py"/>
        <source>The report is in {path}.</source>
        <translation>Der Bericht liegt unter {path}.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/report_dialog.py"/>
        <source>The report is on the clipboard.</source>
        <translation>Der Bericht ist in der Zwischenablage.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The resting finger damping a string that should ring.</source>
        <translation>Der ruhende Finger dämpft eine Saite, die klingen soll.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/techniques/exercises.py"/>
        <source>The right hand of {bar} alone on open strings, fingers as written: the left hand rests. Until it runs by itself.</source>
        <translation>Die rechte Hand von {bar} allein auf leeren Saiten, Finger wie notiert: Die linke Hand ruht. Bis es von selbst läuft.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The ring finger late.</source>
        <translation>Der Ringfinger kommt zu spät.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The same finger must go to another string at once; the note before it is let go a moment early.</source>
        <translation>Derselbe Finger muss sofort auf eine andere Saite; der Ton davor wird einen Augenblick früher losgelassen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/panel.py"/>
        <source>The same in all bars alike</source>
        <translation>Dasselbe in allen gleichen Takten</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/hand_edits.py"/>
        <source>The same in {n} bar like it</source>
        <translation>Ebenso in {n} gleichem Takt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/hand_edits.py"/>
        <source>The same in {n} bars like it</source>
        <translation>Ebenso in {n} gleichen Takten</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/tour.py"/>
        <source>The same lesson seen otherwise: what it teaches, how it is practised day by day, and what you will say. Ctrl+1 to Ctrl+4 turn to them.</source>
        <translation>Dieselbe Lektion, anders gesehen: was sie lehrt, wie sie Tag für Tag geübt wird und was Sie sagen werden. Strg+1 bis Strg+4 wechseln dorthin.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/panel.py"/>
        <source>The same music: {bars}</source>
        <translation>Dieselbe Musik: {bars}</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The same note several times with changing fingers, each as clear as the first.</source>
        <translation>Derselbe Ton mehrmals mit wechselnden Fingern, jeder so klar wie der erste.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/telling/warnings.py"/>
        <source>The score has no key signature; it is shown in {key}, as it is heard.</source>
        <translation>Die Noten haben keine Vorzeichen am Anfang; sie werden in {key} gezeigt, wie man sie hört.</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>The score is marked {key}, and moving it does not change its mode: {wanted} was taken by its key signature.</source>
        <translation>Die Noten stehen in {key}, und Verschieben ändert das Tongeschlecht nicht: {wanted} wurde nach den Vorzeichen genommen.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/telling/warnings.py"/>
        <source>The score prints a finger at {n} note and does not say for what instrument; it is kept where you choose the instrument and leave the pitch as written.</source>
        <translation>Die Noten drucken bei {n} Note einen Finger und sagen nicht, für welches Instrument; er bleibt, wo Sie das Instrument wählen und die Tonhöhe lassen, wie sie steht.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/telling/warnings.py"/>
        <source>The score prints fingers at {n} notes and does not say for what instrument; they are kept where you choose the instrument and leave the pitch as written.</source>
        <translation>Die Noten drucken bei {n} Noten Finger und sagen nicht, für welches Instrument; sie bleiben, wo Sie das Instrument wählen und die Tonhöhe lassen, wie sie steht.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/telling/warnings.py"/>
        <source>The score prints the fingering of {n} note; it is kept where it fits the instrument and the key.</source>
        <translation>Die Noten enthalten den Fingersatz von {n} Ton; er bleibt erhalten, wo er zu Instrument und Tonart passt.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/telling/warnings.py"/>
        <source>The score prints the fingering of {n} notes; it is kept where it fits the instrument and the key.</source>
        <translation>Die Noten enthalten den Fingersatz von {n} Tönen; er bleibt erhalten, wo er zu Instrument und Tonart passt.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/tour.py"/>
        <source>The score with its fingers</source>
        <translation>Die Noten mit Fingersatz</translation>
    </message>
    <message>
        <location filename="../../workbench/store/learning.py"/>
        <source>The scores print {n} left fingers that can be held on the {instrument}; give scores with at least {fewest}.</source>
        <translation>Die Noten drucken {n} linke Finger, die auf dem Instrument ({instrument}) gehalten werden können; es braucht mindestens {fewest}.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The second note is sounded by a left finger falling on the string.</source>
        <translation>Der zweite Ton entsteht durch einen linken Finger, der auf die Saite fällt.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The second note is sounded by a left finger pulling aside as it leaves; the lower finger is there already.</source>
        <translation>Der zweite Ton entsteht durch einen linken Finger, der beim Verlassen seitlich zupft; der untere Finger liegt schon.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/menu.py"/>
        <source>The selected note</source>
        <translation>Der gewählte Ton</translation>
    </message>
    <message>
        <location filename="../../workbench/store/refusals.py"/>
        <source>The server has no database for the lesson store {place}; check its name in PLUCKWRIGHT_DB, or have it made.</source>
        <translation>Der Server hat keine Datenbank für den Lektionsspeicher {place}; prüfen Sie den Namen in PLUCKWRIGHT_DB, oder lassen Sie sie anlegen.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/refusals.py"/>
        <source>The server lets this user only look at the lesson store {place}, so nothing was saved; ask whoever looks after the server for the right to write.</source>
        <translation>Der Server lässt diesen Benutzer den Lektionsspeicher {place} nur ansehen, daher wurde nichts gespeichert; bitten Sie den Betreuer des Servers um das Recht zu schreiben.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/refusals.py"/>
        <source>The server of the lesson store {place} does not let this user in; check the user's name and password in PLUCKWRIGHT_DB.</source>
        <translation>Der Server des Lektionsspeichers {place} lässt diesen Benutzer nicht ein; prüfen Sie Benutzernamen und Passwort in PLUCKWRIGHT_DB.</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/shapes/shape.py"/>
        <source>The shape has {frets} places, but {instrument} has {strings} strings; give one fret for each, from the highest-numbered string to string 1.</source>
        <translation>Die Form hat {frets} Stellen, aber {instrument} hat {strings} Saiten; geben Sie für jede einen Bund an, von der Saite mit der höchsten Nummer bis zu Saite 1.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/pack_words.py"/>
        <source>The sheet (PDF)</source>
        <translation>Das Blatt (PDF)</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/calibrate.py"/>
        <source>The shipped model does better; keep it, or grade more pieces.</source>
        <translation>Das ausgelieferte Modell ist besser; behalten Sie es oder stufen Sie mehr Stücke ein.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/sound_files.py"/>
        <source>The sound is written: {path}</source>
        <translation>Der Klang ist geschrieben: {path}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/spans_dialog.py"/>
        <source>The span of 1 and 4 must be the widest of the three.</source>
        <translation>Die Spannweite von 1 und 4 muss die größte der drei sein.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/trouble_dialog.py"/>
        <source>The store cannot be moved aside ({fault}).</source>
        <translation>Der Speicher lässt sich nicht beiseitelegen ({fault}).</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/left_dialog.py"/>
        <source>The store could not take these changes when they were made; they were written aside. Put them back into their lessons, or throw them away.</source>
        <translation>Der Lektionsspeicher konnte diese Änderungen nicht annehmen, als sie gemacht wurden; sie wurden beiseitegelegt. Holen Sie sie in ihre Lektionen zurück, oder werfen Sie sie weg.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/left_dialog.py"/>
        <source>The store does not take them yet; they stay where they are.</source>
        <translation>Der Lektionsspeicher nimmt sie noch nicht an; sie bleiben, wo sie sind.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/trouble_dialog.py"/>
        <source>The store that is there is moved aside, not deleted</source>
        <translation>Der vorhandene Speicher wird beiseitegelegt, nicht gelöscht</translation>
    </message>
    <message>
        <location filename="../../workbench/store/backups.py"/>
        <location filename="../../workbench/ui/keeping/backups_dialog.py"/>
        <source>The store {place} lies on a server; its backups are made there.</source>
        <translation>Der Speicher {place} liegt auf einem Server; seine Sicherungen werden dort gemacht.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/sound_files.py"/>
        <source>The student's pack is written: {path}</source>
        <translation>Das Schülerpaket ist geschrieben: {path}</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/grade.py"/>
        <source>The teacher's word: {grade}</source>
        <translation>Urteil der Lehrkraft: {grade}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/view.py"/>
        <source>The technique in full</source>
        <translation>Die Technik ausführlich</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/player/trainer.py"/>
        <source>The tempo climbs: choose a last tempo not below the first.</source>
        <translation>Das Tempo steigt: bitte ein letztes Tempo wählen, das nicht unter dem ersten liegt.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The thumb staying behind.</source>
        <translation>Der Daumen bleibt zurück.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The tone thins out while the left finger lifts too soon.</source>
        <translation>Der Ton wird dünn, wenn der linke Finger zu früh loslässt.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/plan_grid.py"/>
        <source>The tracks to play along with lie in the folder '{folder}', named by bars and tempo.</source>
        <translation>Die Spuren zum Mitspielen liegen im Ordner '{folder}', benannt nach Takten und Tempo.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/telling/warnings.py"/>
        <source>The tune bears D.C., D.S., Fine, Segno or Coda marks whose bars cannot be told from the text; set them by hand.</source>
        <translation>Das Stück trägt D.C.-, D.S.-, Fine-, Segno- oder Coda-Zeichen, deren Takte aus dem Text nicht hervorgehen; setzen Sie sie von Hand.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The tune begins before the first full bar; count a whole bar and come in on time.</source>
        <translation>Die Melodie beginnt vor dem ersten vollen Takt; einen ganzen Takt vorzählen und pünktlich einsetzen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>The tune had to change in bar {bars}. Listen whether it bears it.</source>
        <translation>Die Melodie musste sich in Takt {bars} ändern. Hören Sie, ob sie es verträgt.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The upper note too weak.</source>
        <translation>Der obere Ton zu schwach.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/fit.py"/>
        <location filename="../../workbench/ui/views/grading/scores_dialog.py"/>
        <source>The weights are again what they were before the last fit.</source>
        <translation>Die Gewichte sind wieder wie vor der letzten Anpassung.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The whole hand moves along the neck to another position; thumb and arm go together.</source>
        <translation>Die ganze Hand geht am Hals entlang in eine andere Lage; Daumen und Arm gehen mit.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <location filename="../../workbench/ui/window/tour.py"/>
        <source>The whole lesson</source>
        <translation>Die ganze Lektion</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/items.py"/>
        <source>The whole passage in tempo, three times in a row without a slip.</source>
        <translation>Die ganze Stelle im Tempo, dreimal hintereinander ohne Fehler.</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>The whole piece goes {way} beyond what was asked: elsewhere the tune leaves the instrument.</source>
        <translation>Das ganze Stück geht über das Gewünschte hinaus {way}: Sonst verlässt die Melodie das Instrument.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <location filename="../../workbench/ui/views/page.py"/>
        <source>The whole view</source>
        <translation>Die ganze Ansicht</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/app.py"/>
        <source>The window speaks {language} now.</source>
        <translation>Das Fenster spricht jetzt {language}.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/music_changed.py"/>
        <source>The words of the script for {n} bar that is no longer played went with it.</source>
        <translation>Der Skripttext zu {n} Takt, der nicht mehr gespielt wird, entfiel mit ihm.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/music_changed.py"/>
        <source>The words of the script for {n} bars that are no longer played went with them.</source>
        <translation>Der Skripttext zu {n} Takten, die nicht mehr gespielt werden, entfiel mit ihnen.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/cluster.py"/>
        <source>The worker at {address} has version {other} of the program and this is {version}; install the same everywhere.</source>
        <translation>Der Helfer unter {address} hat Version {other} des Programms, hier ist es {version}; überall dieselbe einrichten.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The wrist bouncing.</source>
        <translation>Das Handgelenk federt.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/export_dialog.py"/>
        <source>The {what} is written: {path}</source>
        <translation>Gespeichert ({what}): {path}</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/items.py"/>
        <source>Then both hands slowly, one bar at a time.</source>
        <translation>Dann beide Hände langsam, Takt für Takt.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/items.py"/>
        <source>Then the passage, a little faster each time it is right twice.</source>
        <translation>Dann die Stelle, jedes Mal etwas schneller, wenn sie zweimal gelungen ist.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/trouble_dialog.py"/>
        <source>There are no backups of it yet.</source>
        <translation>Es gibt noch keine Sicherungen davon.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/backup.py"/>
        <source>There are no backups yet.</source>
        <translation>Es gibt noch keine Sicherungen.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/learning.py"/>
        <source>There are no choices to learn from yet; pin some fingers or take another fingering in a few bars first.</source>
        <translation>Es gibt noch keine Entscheidungen, aus denen sich lernen lässt; legen Sie zuerst einige Finger fest oder nehmen Sie in einigen Takten einen anderen Fingersatz.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/bars.py"/>
        <location filename="../../workbench/music/edits/signs.py"/>
        <source>There are no such bars; choose bars of the piece.</source>
        <translation>Diese Takte gibt es nicht; wählen Sie Takte des Stücks.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/meters.py"/>
        <source>There are notes at the beginning of {bar}; delete them first.</source>
        <translation>Am Anfang von {bar} stehen Töne; löschen Sie sie zuerst.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/source.py"/>
        <source>There are {last} demo pieces; write demo:1 to demo:{last}.</source>
        <translation>Es gibt {last} Beispielstücke; schreiben Sie demo:1 bis demo:{last}.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/backup.py"/>
        <source>There is no backup {n}; 'backup --list' tells the numbers.</source>
        <translation>Es gibt keine Sicherung {n}; „backup --list“ nennt die Nummern.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/app.py"/>
        <source>There is no display to open the window on; use a verb instead, such as 'read demo' or 'handout demo -o handout.pdf' ('--help' lists them).</source>
        <translation>Es gibt keinen Bildschirm, auf dem das Fenster aufgehen kann; nehmen Sie stattdessen einen Befehl, etwa „read demo“ oder „handout demo -o handout.pdf“ („--help“ zählt sie auf).</translation>
    </message>
    <message>
        <location filename="../../workbench/cli.py"/>
        <source>There is no display to open the window on; use a verb instead, such as 'read demo' or 'handout demo -o handout.pdf' (verbs: {verbs}).</source>
        <translation>Es gibt keinen Bildschirm, auf dem sich das Fenster öffnen ließe; nehmen Sie ein Verb, etwa „read demo“ oder „handout demo -o handout.pdf“ (Verben: {verbs}).</translation>
    </message>
    <message>
        <location filename="../../workbench/store/grading.py"/>
        <source>There is no fit to grades to take back; 'fit --grades' makes one.</source>
        <translation>Es gibt keine Anpassung an Stufen zum Zurücknehmen; „fit --grades“ macht eine.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/learning.py"/>
        <source>There is no fit to take back; 'fit' makes one.</source>
        <translation>Es gibt keine Anpassung zum Zurücknehmen; „fit“ macht eine.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/panel.py"/>
        <source>There is no other fingering worth naming.</source>
        <translation>Es gibt keinen anderen nennenswerten Fingersatz.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/dialogs.py"/>
        <source>There is no other lesson with these words.</source>
        <translation>Keine andere Lektion enthält diese Wörter.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/meters.py"/>
        <location filename="../../workbench/music/edits/notes.py"/>
        <location filename="../../workbench/music/edits/signs.py"/>
        <source>There is no such bar; choose one of the piece.</source>
        <translation>Diesen Takt gibt es nicht; wählen Sie einen des Stücks.</translation>
    </message>
    <message>
        <location filename="../../workbench/sound/programme.py"/>
        <source>There is nothing to play here; choose a bar with music.</source>
        <translation>Hier ist nichts zu spielen; bitte einen Takt mit Musik wählen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/left_dialog.py"/>
        <source>They are offered again at the next start</source>
        <translation>Sie werden beim nächsten Start wieder angeboten</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>This &amp;bar, then its other fingering</source>
        <translation>Dieser &amp;Takt, dann sein anderer Fingersatz</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/menu.py"/>
        <location filename="../../workbench/ui/window/columns.py"/>
        <location filename="../../workbench/ui/window/panels.py"/>
        <source>This bar</source>
        <translation>Dieser Takt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/exercises.py"/>
        <source>This bar gives nothing to an exercise.</source>
        <translation>Dieser Takt gibt nichts für eine Übung her.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/panel.py"/>
        <source>This bar has no fingering to compare with yet; try again in a moment.</source>
        <translation>Für diesen Takt gibt es noch keinen Fingersatz zum Vergleichen; versuchen Sie es gleich noch einmal.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/sound.py"/>
        <source>This bar has no other fingering to compare with yet.</source>
        <translation>Dieser Takt hat noch keinen anderen Fingersatz zum Vergleichen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/panels.py"/>
        <source>This bar, or the whole lesson</source>
        <translation>Dieser Takt oder die ganze Lektion</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/pack_words.py"/>
        <source>This browser cannot play the sound; open the files in the folder tracks.</source>
        <translation>Dieser Browser kann den Klang nicht abspielen; bitte die Dateien im Ordner tracks öffnen.</translation>
    </message>
    <message>
        <location filename="../../workbench/sound/device.py"/>
        <source>This computer has no sound device that can be used; save the sound as a WAV file (Sound, Export sound) and play it elsewhere.</source>
        <translation>Dieser Computer hat kein brauchbares Tongerät; bitte den Klang als WAV-Datei speichern (Klang, Klang exportieren) und anderswo abspielen.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/one_sentence.py"/>
        <source>This is a fault of ours ({what}); {report}.</source>
        <translation>Das ist ein Fehler von uns ({what}); {report}.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/meeting_dialog.py"/>
        <source>This lesson was changed here and in another window, in the same place. Nothing is lost: what gives way stays in the history, as a version or as a lesson of its own.</source>
        <translation>Diese Lektion wurde hier und in einem anderen Fenster an derselben Stelle geändert. Nichts geht verloren: Was weicht, bleibt im Verlauf, als Version oder als eigene Lektion.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/import_dialog.py"/>
        <source>This music is on your shelf already: '{title}', with {lessons}. Open it, or make another lesson on the same piece.</source>
        <translation>Diese Musik steht schon in Ihrem Regal: „{title}“ ({lessons}). Öffnen Sie sie, oder legen Sie eine weitere Lektion zum selben Stück an.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/hand_edits.py"/>
        <source>This note cannot be played on a string further that way.</source>
        <translation>In dieser Richtung ist der Ton auf keiner weiteren Saite spielbar.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/edits.py"/>
        <source>This note has no place on the neck yet; choose a place for it first.</source>
        <translation>Dieser Ton hat noch keinen Platz auf dem Hals; wählen Sie zuerst einen.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/edits.py"/>
        <source>This note is an open string and takes no left finger; move it to another string to stop it.</source>
        <translation>Dieser Ton ist eine leere Saite und braucht keinen linken Finger; legen Sie ihn auf eine andere Saite, um ihn zu greifen.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/edits.py"/>
        <source>This note is written with one stem; only two can be two strings.</source>
        <translation>Diese Note hat nur einen Hals; nur zwei Hälse können zwei Saiten sein.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/edits.py"/>
        <source>This remark has no words yet; write some, or delete it.</source>
        <translation>Dieser Hinweis hat noch keine Worte; schreiben Sie welche oder löschen Sie ihn.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/changes_list.py"/>
        <source>This state of the lesson is not kept any more.</source>
        <translation>Dieser Stand der Lektion ist nicht mehr aufbewahrt.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/session.py"/>
        <source>This step is gone.</source>
        <translation>Diesen Schritt gibt es nicht mehr.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/printing.py"/>
        <source>This system knows no printer. Set one up, or close this and make a PDF with Lesson, Handout, to print it elsewhere.</source>
        <translation>Dieses System kennt keinen Drucker. Richten Sie einen ein, oder schließen Sie dieses Fenster und erzeugen Sie mit „Lektion“, „Arbeitsblatt“ ein PDF, um es anderswo zu drucken.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Three even notes in the time of two.</source>
        <translation>Drei gleiche Töne in der Zeit von zweien.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Thumb, index and middle pluck three strings at once; prepare all three before the sound.</source>
        <translation>Daumen, Zeige- und Mittelfinger zupfen drei Saiten zugleich; alle drei vor dem Klang bereitlegen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/new_piece_dialog.py"/>
        <source>Ti&amp;me</source>
        <translation>Ta&amp;ktart</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/plan/view.py"/>
        <source>Tick '{item}'</source>
        <translation>„{item}“ abhaken</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/import_dialog.py"/>
        <source>Tick at least one part.</source>
        <translation>Kreuzen Sie mindestens einen Part an.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/plan_grid.py"/>
        <source>Tick what is done. The number is the tempo to reach, in quarter notes a minute; the letter says how to practise.</source>
        <translation>Erledigtes abhaken. Die Zahl ist das Zieltempo in Vierteln je Minute; der Buchstabe sagt, wie geübt wird.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/commands.py"/>
        <source>Tie two notes</source>
        <translation>Zwei Töne mit Haltebogen verbinden</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/teacher.py"/>
        <location filename="../../workbench/ui/views/script/view.py"/>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/marks.py"/>
        <source>Time from this bar on</source>
        <translation>Taktart ab diesem Takt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/marks.py"/>
        <source>Time signature</source>
        <translation>Taktart</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/marks.py"/>
        <source>Time signature of this bar</source>
        <translation>Taktart dieses Takts</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Time signature of this bar a&amp;lone …</source>
        <translation>Taktart nur dieses Ta&amp;kts …</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/meters.py"/>
        <source>Time signature {beats}/{unit} cannot be written; take 1 to {most} beats over 1, 2, 4, 8, 16 or 32.</source>
        <translation>Die Taktart {beats}/{unit} lässt sich nicht schreiben; nehmen Sie 1 bis {most} Schläge über 1, 2, 4, 8, 16 oder 32.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <location filename="../../workbench/ui/shelf/model.py"/>
        <location filename="../../workbench/ui/writing/marks.py"/>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/handout_dialog.py"/>
        <source>Title of the &amp;book</source>
        <translation>Titel des &amp;Hefts</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/tour.py"/>
        <source>Title, student, hand and grade. Change the student's hand here and watch the reach above the fretboard.</source>
        <translation>Titel, Schüler, Hand und Stufe. Ändern Sie hier die Hand des Schülers und beobachten Sie die Spannweite über dem Griffbrett.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/marks.py"/>
        <source>Titles</source>
        <translation>Titel</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>To Coda</source>
        <translation>zur Coda</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>To another &amp;voice</source>
        <translation>In andere &amp;Stimme</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/handout_dialog.py"/>
        <source>To ba&amp;r</source>
        <translation>&amp;Bis Takt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/plan/table.py"/>
        <source>To do</source>
        <translation>Aufgabe</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/finger.py"/>
        <source>To look at in the score</source>
        <translation>In den Noten nachzusehen</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/pack_words.py"/>
        <source>Today: day {day} of the plan</source>
        <translation>Heute: Tag {day} des Plans</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Touch the string right over the fret, pluck near the bridge, lift at once.</source>
        <translation>Die Saite genau über dem Bundstab berühren, nah am Steg zupfen, sofort abheben.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Touching the string between.</source>
        <translation>Die Saite dazwischen berühren.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/tour.py"/>
        <source>Tour of the window</source>
        <translation>Rundgang durch das Fenster</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/arrange.py"/>
        <source>Transposing by {transpose} semitones is too far; choose a number from -{most} to {most}.</source>
        <translation>Um {transpose} Halbtöne zu versetzen ist zu weit; wählen Sie eine Zahl von -{most} bis {most}.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/keys.py"/>
        <source>Trying keys</source>
        <translation>Tonarten werden probiert</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/fingers.py"/>
        <source>Trying the fingering</source>
        <translation>Fingersatz ausprobieren</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/import_dialog.py"/>
        <source>Tune</source>
        <translation>Melodie</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/player/tuner.py"/>
        <source>Tuner tones</source>
        <translation>Stimmtöne</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/read.py"/>
        <source>Tunes in this book (choose one with --tune N)</source>
        <translation>Stücke in diesem Heft (eines wählen mit --tune N)</translation>
    </message>
    <message>
        <location filename="../../workbench/instrument/table.py"/>
        <source>Tuning '{name}': give 1 to 10 strings, highest-numbered string first.</source>
        <translation>Stimmung „{name}“: Geben Sie 1 bis 10 Saiten an, die mit der höchsten Nummer zuerst.</translation>
    </message>
    <message>
        <location filename="../../workbench/instrument/table.py"/>
        <source>Tuning '{name}': the scale length after @ must be 200 to 1200 mm.</source>
        <translation>Stimmung „{name}“: Die Mensur nach @ muss 200 bis 1200 mm betragen.</translation>
    </message>
    <message>
        <location filename="../../workbench/instrument/table.py"/>
        <source>Tuning '{whole}': '{name}' is no pitch; write each string like G4 or F#3.</source>
        <translation>Stimmung „{whole}“: „{name}“ ist kein Ton; schreiben Sie jede Saite wie G4 oder F#3.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/words.py"/>
        <location filename="../../workbench/handout/sheets/grip_sheet.py"/>
        <source>Tuning (string, note)</source>
        <translation>Stimmung (Saite, Ton)</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/player/conductor.py"/>
        <source>Tuning up</source>
        <translation>Die Saiten werden gestimmt</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Turning it into triplets.</source>
        <translation>Triolen daraus machen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/compare_dialog.py"/>
        <source>Two fingerings compared</source>
        <translation>Zwei Fingersätze im Vergleich</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Two or more fingers pluck their strings as one, from the knuckles.</source>
        <translation>Zwei oder mehr Finger zupfen ihre Saiten wie einer, aus den Grundgelenken.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Two quick ones and a slow one.</source>
        <translation>Zwei schnelle und ein langsamer.</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Two voices move together in thirds or sixths; the hand learns a few shapes and slides between them.</source>
        <translation>Zwei Stimmen gehen zusammen in Terzen oder Sexten; die Hand lernt wenige Formen und gleitet dazwischen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/panel.py"/>
        <source>Type a fingering of your own and see what it would bring</source>
        <translation>Einen eigenen Fingersatz eingeben und sehen, was er brächte</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/why_not.py"/>
        <source>Type into the table, or as figures; what stays empty is chosen for you.</source>
        <translation>In der Tabelle oder als Ziffern eingeben; was leer bleibt, wird für Sie gewählt.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/why_not.py"/>
        <source>Type the fingering you have in mind</source>
        <translation>Geben Sie den Fingersatz ein, an den Sie denken</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>Und&amp;o</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/words.py"/>
        <source>Under the tablature: {hand}, p thumb, i index, m middle, a ring finger.</source>
        <translation>Unter der Tabulatur: {hand}, p Daumen, i Zeige-, m Mittel-, a Ringfinger.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/meeting_dialog.py"/>
        <source>Undo brings theirs back</source>
        <translation>Rückgängig holt den anderen zurück</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Undo histor&amp;y …</source>
        <translation>&amp;Verlauf …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/history_dialog.py"/>
        <source>Undo history</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/bar_rows.py"/>
        <source>Unfinished</source>
        <translation>Offene</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/commands.py"/>
        <source>Untie a note</source>
        <translation>Haltebogen lösen</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/edits.py"/>
        <source>Untitled piece</source>
        <translation>Stück ohne Titel</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/finger_keys.py"/>
        <source>Up, Down</source>
        <translation>Auf, Ab</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/filters.py"/>
        <source>Used within a month</source>
        <translation>Im letzten Monat benutzt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/filters.py"/>
        <source>Used within a week</source>
        <translation>In der letzten Woche benutzt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/filters.py"/>
        <source>Used within three months</source>
        <translation>In den letzten drei Monaten benutzt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>V</source>
        <translation>V</translation>
    </message>
    <message>
        <location filename="../../workbench/store/sheet_facts.py"/>
        <source>Version '{name}'</source>
        <translation>Fassung „{name}“</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/versions_dialog.py"/>
        <source>Version '{name}' is deleted; the lesson itself is as it was.</source>
        <translation>Fassung „{name}“ ist gelöscht; die Lektion selbst bleibt, wie sie war.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/versions_dialog.py"/>
        <location filename="../../workbench/ui/window/openers.py"/>
        <source>Version '{name}' is kept.</source>
        <translation>Fassung „{name}“ ist gesichert.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/versions.py"/>
        <source>Version {id} is not on the shelf any more.</source>
        <translation>Fassung {id} steht nicht mehr im Regal.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/versions_dialog.py"/>
        <source>Versions</source>
        <translation>Fassungen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>Versions of the piece for other grades, in the same key</source>
        <translation>Fassungen des Stücks für andere Stufen, in derselben Tonart</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/easier_dialog.py"/>
        <source>Versions, the easiest first</source>
        <translation>Fassungen, die leichteste zuerst</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>Voice {voice}</source>
        <translation>Stimme {voice}</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/notes.py"/>
        <source>Voice {voice} sounds there already; delete or shorten its notes first.</source>
        <translation>Stimme {voice} klingt dort schon; löschen oder kürzen Sie zuerst ihre Töne.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/bar.py"/>
        <source>Voices</source>
        <translation>Stimmen</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/notes.py"/>
        <source>Voices are numbered 1 to {most}; choose one.</source>
        <translation>Die Stimmen sind von 1 bis {most} nummeriert; wählen Sie eine davon.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/bar.py"/>
        <source>Voices: {list}</source>
        <translation>Stimmen: {list}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/view.py"/>
        <source>W&amp;here it occurs</source>
        <translation>&amp;Wo sie vorkommt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/hand_edits.py"/>
        <source>Wait until the bar is fingered, then pin its notes.</source>
        <translation>Warten Sie, bis der Takt einen Fingersatz hat, dann legen Sie seine Töne fest.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/sound.py"/>
        <source>Wait until the lesson is fingered, then listen.</source>
        <translation>Bitte warten, bis der Fingersatz da ist, dann hören.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/sound_files.py"/>
        <source>Wait until the lesson is fingered, then make the pack.</source>
        <translation>Bitte warten, bis der Fingersatz da ist, dann das Paket machen.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/items.py"/>
        <source>Warm up</source>
        <translation>Aufwärmen</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/cautions.py"/>
        <source>Warm up before playing and stop at once where anything hurts; pain that stays or comes back belongs before a teacher and a health professional.</source>
        <translation>Vor dem Spielen aufwärmen und sofort aufhören, wo etwas wehtut; mit einem Schmerz, der bleibt oder wiederkommt, zur Lehrkraft und zu Ärztin/Arzt oder Therapeut:in gehen.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/words.py"/>
        <source>Warm up before you play, rest for a few minutes after every twenty, and stop at once if anything hurts. Pain that stays or comes back: ask your teacher or a health professional.</source>
        <translation>Vor dem Spielen aufwärmen, nach je zwanzig Minuten einige Minuten Pause machen und sofort aufhören, wenn etwas wehtut. Bleibt ein Schmerz oder kommt er wieder: die Lehrkraft oder Ärztin/Arzt oder Therapeut:in fragen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/panel.py"/>
        <source>Warm up first, rest often, and stop if it hurts.</source>
        <translation>Erst aufwärmen, oft ausruhen und aufhören, wenn es schmerzt.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/read.py"/>
        <source>Warning: {warning}</source>
        <translation>Achtung: {warning}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/view.py"/>
        <source>Watch for: {what}</source>
        <translation>Achtung: {what}</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/files/text_file.py"/>
        <source>WebVTT cues</source>
        <translation>WebVTT-Untertitel</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/charts/grades.py"/>
        <source>Weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/learning.py"/>
        <location filename="../../workbench/ui/views/grading/scores_dialog.py"/>
        <source>Weights that changed</source>
        <translation>Geänderte Gewichte</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/teacher.py"/>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/history_dialog.py"/>
        <source>What &amp;changes there, against now</source>
        <translation>&amp;Unterschiede dort gegenüber jetzt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <source>What arranging changed</source>
        <translation>Was das Einrichten geändert hat</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>What can be done about it</source>
        <translation>Was sich damit tun lässt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/changes_list.py"/>
        <source>What changed</source>
        <translation>Was sich geändert hat</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/meeting_dialog.py"/>
        <source>What differs</source>
        <translation>Was sich unterscheidet</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/keeper.py"/>
        <source>What gave way: {label}</source>
        <translation>Was gewichen ist: {label}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/kit/notice.py"/>
        <source>What happened …</source>
        <translation>Was ist passiert …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/player/bar.py"/>
        <source>What is heard now</source>
        <translation>Was jetzt erklingt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/player/bar.py"/>
        <source>What is played</source>
        <translation>Was gespielt wird</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/reading.py"/>
        <location filename="../../workbench/ui/views/script/view.py"/>
        <source>What is said</source>
        <translation>Was gesagt wird</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/view.py"/>
        <source>What is shown</source>
        <translation>Was gezeigt wird</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/groups_dialog.py"/>
        <source>What is the group called?</source>
        <translation>Wie heißt die Gruppe?</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/versions_dialog.py"/>
        <location filename="../../workbench/ui/window/openers.py"/>
        <source>What is this version called?</source>
        <translation>Wie heißt diese Fassung?</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/easier_dialog.py"/>
        <source>What it has otherwise than the lesson now</source>
        <translation>Was sie anders hat als die Lektion jetzt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/scores_dialog.py"/>
        <source>What it prints</source>
        <translation>Was darin steht</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/learning.py"/>
        <location filename="../../workbench/ui/views/grading/scores_dialog.py"/>
        <source>What it weighs</source>
        <translation>Was es gewichtet</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/why_not.py"/>
        <source>What it would bring</source>
        <translation>Was er brächte</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/charts/grades.py"/>
        <source>What makes up the grade</source>
        <translation>Woraus sich die Stufe ergibt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/words.py"/>
        <source>What should the student know, feel or listen for here?</source>
        <translation>Was soll man hier wissen, spüren oder hören?</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>What the fingering prefers has changed: weights learnt from choices.</source>
        <translation>Die Vorlieben des Fingersatzes haben sich geändert: Gewichte aus Entscheidungen gelernt.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>What the list shows</source>
        <translation>Was die Liste zeigt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/page.py"/>
        <source>What the program says; write over it.</source>
        <translation>Das sagt das Programm; schreiben Sie darüber.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/scope.py"/>
        <source>What the remark is about</source>
        <translation>Worum es im Hinweis geht</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bars/panel.py"/>
        <source>What the small picture of each bar shows</source>
        <translation>Was das kleine Bild jedes Takts zeigt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/exercises.py"/>
        <source>What to do</source>
        <translation>Was zu tun ist</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/next.py"/>
        <source>What to teach next</source>
        <translation>Was als Nächstes kommt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/view.py"/>
        <source>What was altered, by bar</source>
        <translation>Was geändert wurde, nach Takten</translation>
    </message>
    <message>
        <location filename="../../workbench/store/told.py"/>
        <source>What was changed after the backup cannot be told and is lost.</source>
        <translation>Was nach der Sicherung geändert wurde, lässt sich nicht feststellen und ist verloren.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/states.py"/>
        <source>What was last looked at</source>
        <translation>Das zuletzt Angesehene</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/view.py"/>
        <source>What was measured, the hardest first</source>
        <translation>Was gemessen wurde, das Schwerste zuerst</translation>
    </message>
    <message>
        <location filename="../../workbench/store/told.py"/>
        <location filename="../../workbench/ui/keeping/trouble_dialog.py"/>
        <source>What was there lies in {path}.</source>
        <translation>Was dort war, liegt in {path}.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/compare_dialog.py"/>
        <source>What would the other choice cost?</source>
        <translation>Was würde die andere Wahl kosten?</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/tour.py"/>
        <source>What you will say in this bar. Press Ctrl+N, choose what the remark is about, and write a sentence; Ctrl+Return keeps it.</source>
        <translation>Was Sie in diesem Takt sagen werden. Drücken Sie Strg+N, wählen Sie, worum es geht, und schreiben Sie einen Satz; Strg+Eingabe übernimmt ihn.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/leaving.py"/>
        <source>What you wrote can be kept nowhere; copy it before you close again.</source>
        <translation>Was Sie geschrieben haben, kann nirgends abgelegt werden; kopieren Sie es, bevor Sie noch einmal schließen.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/teacher.py"/>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/filters.py"/>
        <source>Whenever used</source>
        <translation>Benutzt: egal wann</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/shortcut_list.py"/>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/view.py"/>
        <source>Where and how</source>
        <translation>Wo und wie</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/view.py"/>
        <source>Where it occurs</source>
        <translation>Wo sie vorkommt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/music.py"/>
        <source>Where the next note goes, and what it will be</source>
        <translation>Wohin der nächste Ton kommt und welcher es wird</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/lessons.py"/>
        <source>Where the words were found</source>
        <translation>Wo die Wörter gefunden wurden</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bars/panel.py"/>
        <source>Which bars are listed</source>
        <translation>Welche Takte aufgeführt sind</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/filters.py"/>
        <source>Which lessons</source>
        <translation>Welche Lektionen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/player/bar.py"/>
        <source>Which notes are brought out</source>
        <translation>Welche Noten hervortreten</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/shortcut_list.py"/>
        <source>While music is written</source>
        <translation>Während Musik geschrieben wird</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/columns.py"/>
        <location filename="../../workbench/ui/window/panels.py"/>
        <source>Whole lesson</source>
        <translation>Ganze Lektion</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/grade.py"/>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/teacher.py"/>
        <source>Why it is cut</source>
        <translation>Grund der Kürzung</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Why no&amp;t …</source>
        <translation>Warum nich&amp;t …</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/why_not.py"/>
        <source>Why not another fingering of {bar}?</source>
        <translation>Warum kein anderer Fingersatz, {bar}?</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/scripts/files.py"/>
        <source>Why not the other fingering: {why}</source>
        <translation>Warum nicht der andere Fingersatz: {why}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/rejected.py"/>
        <source>Why not the other one</source>
        <translation>Warum nicht der andere</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/rejected.py"/>
        <source>Why the hand does not take it</source>
        <translation>Warum die Hand ihn nicht nimmt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/panel.py"/>
        <source>Wide stretch: fingers {first} and {second} {reach} mm apart; a {size} hand spans {comfort} mm there in comfort.</source>
        <translation>Weite Spreizung: Finger {first} und {second} liegen {reach} mm auseinander; eine Hand der Größe „{size}“ spannt dort bequem {comfort} mm.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/panel.py"/>
        <source>Wide stretch: fingers {first} and {second} {reach} mm apart; this hand spans {comfort} mm there in comfort.</source>
        <translation>Weite Spreizung: Finger {first} und {second} liegen {reach} mm auseinander; diese Hand spannt dort bequem {comfort} mm.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/handout_dialog.py"/>
        <source>With</source>
        <translation>Mit</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/bar_rows.py"/>
        <source>With cut notes</source>
        <translation>Mit gekürzten Tönen</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/bar_rows.py"/>
        <source>With pins</source>
        <translation>Mit Festlegungen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <source>Within the grade</source>
        <translation>In der Stufe</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/page.py"/>
        <source>Words for {place}</source>
        <translation>Text für {place}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/pieces.py"/>
        <source>Words in title, composer, file name</source>
        <translation>Wörter in Titel, Komponist, Dateiname</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/filters.py"/>
        <source>Words in title, student, techniques, remarks</source>
        <translation>Wörter in Titel, Schüler, Techniken, Hinweisen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/words.py"/>
        <source>Words of the remark</source>
        <translation>Text des Hinweises</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/browser.py"/>
        <source>Words to find in the help</source>
        <translation>Suchwörter für die Hilfe</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/panel.py"/>
        <source>Words with emphasis (Ctrl+I)</source>
        <translation>Betonte Worte (Strg+I)</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/next.py"/>
        <source>Work out the fingering of every lesson that has none yet, then compare again</source>
        <translation>Den Fingersatz jeder Lektion berechnen, die noch keinen hat, dann neu vergleichen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Write a &amp;rest</source>
        <translation>&amp;Pause schreiben</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/commands.py"/>
        <source>Write a chord name</source>
        <translation>Akkordnamen schreiben</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/panel.py"/>
        <source>Write a remark</source>
        <translation>Hinweis schreiben</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/panel.py"/>
        <source>Write a remark on this bar, or on all bars selected on the left</source>
        <translation>Einen Hinweis zu diesem Takt oder zu allen links gewählten Takten schreiben</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/commands.py"/>
        <source>Write a rest</source>
        <translation>Pause schreiben</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/commands.py"/>
        <source>Write bars again</source>
        <translation>Takte noch einmal schreiben</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/why_not.py"/>
        <source>Write down why &amp;not</source>
        <translation>Ablehnung &amp;notieren</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/why_not.py"/>
        <source>Write down why not</source>
        <translation>Ablehnung notieren</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/commands.py"/>
        <source>Write fret {fret} on string {string}</source>
        <translation>Bund {fret} auf Saite {string} schreiben</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/exercises.py"/>
        <source>Write the exercise as a remark on its bar</source>
        <translation>Die Übung als Unterrichtshinweis an ihren Takt schreiben</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/page.py"/>
        <source>Write the words for {place}</source>
        <translation>Text für {place} schreiben</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/page.py"/>
        <source>Write what you say here.</source>
        <translation>Schreiben Sie, was Sie hier sagen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/view.py"/>
        <source>Write your own words for the selected row</source>
        <translation>Eigenen Text für die gewählte Zeile schreiben</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/commands.py"/>
        <source>Write {pitch}</source>
        <translation>{pitch} schreiben</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/safe_keeping.py"/>
        <source>Writing the archive</source>
        <translation>Das Archiv wird geschrieben</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/exercises.py"/>
        <source>Writing the exercise</source>
        <translation>Übung wird gespeichert</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/view.py"/>
        <location filename="../../workbench/ui/window/teaching_tabs.py"/>
        <source>Writing the script</source>
        <translation>Skript schreiben</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/export_dialog.py"/>
        <source>Writing the {what}</source>
        <translation>Wird gespeichert: {what}</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/teacher.py"/>
        <source>Written</source>
        <translation>Notiert</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/tips.py"/>
        <source>Written: {quarters} quarters</source>
        <translation>Notiert: {quarters} Viertel</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/tips.py"/>
        <source>Written: {value} ({quarters} quarters)</source>
        <translation>Notiert: {value} ({quarters} Viertel)</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/grades_dialog.py"/>
        <source>Your grade</source>
        <translation>Ihre Stufe</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/grades_dialog.py"/>
        <source>Your grades, and what the estimate makes of them</source>
        <translation>Ihre Stufen und was die Schätzung daraus macht</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/view.py"/>
        <source>Your word: {word}. Estimate: {estimate}.</source>
        <translation>Ihr Urteil: {word}. Schätzung: {estimate}.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/page.py"/>
        <source>Your words for this bar</source>
        <translation>Deine Worte zu diesem Takt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/page.py"/>
        <source>Your words.</source>
        <translation>Ihre Worte.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/printing.py"/>
        <source>Zoom &amp;in</source>
        <translation>Ver&amp;größern</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/printing.py"/>
        <source>Zoom &amp;out</source>
        <translation>Ver&amp;kleinern</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Zoom the score &amp;in</source>
        <translation>Noten &amp;vergrößern</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <source>Zoom the score &amp;out</source>
        <translation>Noten verk&amp;leinern</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a barre ends before string 1, so that its tip joint presses</source>
        <translation>ein Barré endet vor Saite 1, sodass das Endgelenk drücken muss</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a barre has to be laid</source>
        <translation>ein Barré muss gelegt werden</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/legato.py"/>
        <source>a barre is laid or lifted</source>
        <translation>ein Barré wird gelegt oder gelöst</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a barre lies over a string that must stay silent</source>
        <translation>ein Barré liegt über einer Saite, die schweigen muss</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a barre must stay flat beneath strings it does not sound</source>
        <translation>ein Barré muss unter Saiten flach bleiben, die er nicht klingen lässt</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/offered.py"/>
        <source>a book for a class</source>
        <translation>ein Klassenheft</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a broken chord loses a note to its own string</source>
        <translation>ein gebrochener Akkord verliert einen Ton an seine eigene Saite</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a chord made for a strum is plucked</source>
        <translation>ein Akkord, der sich zum Durchschlagen anbietet, wird gezupft</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>a fifth</source>
        <translation>eine Quinte</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a finger has to be put down</source>
        <translation>ein Finger muss aufgesetzt werden</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/legato.py"/>
        <source>a finger hops</source>
        <translation>ein Finger springt</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a finger hops across to another string and cuts the note it leaves</source>
        <translation>ein Finger springt quer auf eine andere Saite und schneidet seinen Ton ab</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a finger hops to another string and cuts the note it leaves</source>
        <translation>ein Finger springt auf eine andere Saite und kürzt den Ton, den er verlässt</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a finger is drawn back behind its own fret</source>
        <translation>ein Finger wird hinter seinen Bund zurückgezogen</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a finger is skipped beside a barre</source>
        <translation>neben einem Barré wird ein Finger ausgelassen</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a finger is skipped though its neighbours stand close together</source>
        <translation>ein Finger wird übersprungen, obwohl seine Nachbarn dicht beieinander stehen</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a finger is spread and must lie flat as well</source>
        <translation>ein Finger ist gespreizt und muss zudem flach liegen</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>a finger laid over string {string} damps the open {note}</source>
        <translation>ein über Saite {string} gelegter Finger dämpft das leere {note}</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a finger leaves its string</source>
        <translation>ein Finger verlässt seine Saite</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a finger leaves the string that is its own in the figure</source>
        <translation>ein Finger verlässt die Saite, die in der Figur seine ist</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a finger other than the first lies over three strings or more</source>
        <translation>ein anderer als der erste Finger liegt über drei oder mehr Saiten</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a finger outside the chosen alternation</source>
        <translation>ein Finger außerhalb des gewählten Wechselschlags</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a finger plucks on the other side of the instrument</source>
        <translation>ein Finger zupft auf der anderen Seite des Instruments</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a finger slides along its string while the note still sounds</source>
        <translation>ein Finger rutscht auf seiner Saite, während der Ton noch klingt</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a finger stands alone that is neither the first nor that of its fret</source>
        <translation>ein Finger steht allein, der weder der erste noch der seines Bundes ist</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a finger takes the place of another one</source>
        <translation>ein Finger löst einen anderen an seiner Stelle ab</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>a fourth</source>
        <translation>eine Quarte</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a fretted note where the open string sounds</source>
        <translation>ein gegriffener Ton, wo die leere Saite klingt</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a guide finger leads the change of position</source>
        <translation>ein Führungsfinger leitet den Lagenwechsel</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a guide finger slides along its string</source>
        <translation>ein Führungsfinger gleitet auf seiner Saite</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a held note blocks fingers that the notes beneath it could use</source>
        <translation>ein gehaltener Ton blockiert Finger, die die Töne darunter brauchen könnten</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a held note is cut short</source>
        <translation>ein gehaltener Ton wird gekürzt</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a held note lies higher on the neck than it needs to</source>
        <translation>ein gehaltener Ton liegt höher am Hals als nötig</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a higher finger reaches over to the bass side, against the slant of the hand</source>
        <translation>ein höherer Finger greift gegen die Schräge der Hand zur Bassseite hinüber</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a laid finger has more than two strings to press</source>
        <translation>ein liegender Finger muss mehr als zwei Saiten drücken</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a laid finger may damp the open string beside it</source>
        <translation>ein liegender Finger kann die leere Saite daneben dämpfen</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a laid finger must arch clear of an open string nearer the floor</source>
        <translation>ein liegender Finger muss sich über eine tiefer gelegene leere Saite wölben</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a laid finger must arch clear of an open string that is struck</source>
        <translation>ein liegender Finger muss sich über eine leere Saite wölben, die angeschlagen wird</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a lone finger of its own fret</source>
        <translation>ein einzelner Finger auf seinem Bund</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>a major seventh</source>
        <translation>eine große Septime</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>a major sixth</source>
        <translation>eine große Sexte</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>a major third</source>
        <translation>eine große Terz</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>a minor seventh</source>
        <translation>eine kleine Septime</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>a minor sixth</source>
        <translation>eine kleine Sexte</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>a minor third</source>
        <translation>eine kleine Terz</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a more relaxed hand</source>
        <translation>eine lockerere Hand</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a narrower barre</source>
        <translation>ein schmalerer Barré</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a note does not last as long as it is written</source>
        <translation>ein Ton dauert nicht so lange wie geschrieben</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/player/bar.py"/>
        <source>a note is missed</source>
        <translation>eine Note fehlt</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a note lies further up the neck than it need</source>
        <translation>ein Ton liegt höher am Hals als nötig</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a note of a broken chord loses its string before the figure turns</source>
        <translation>ein Ton des gebrochenen Akkords verliert seine Saite, bevor die Figur wechselt</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a note of a broken chord stops ringing before the figure turns</source>
        <translation>ein Ton des gebrochenen Akkords verklingt, bevor die Figur wechselt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>a repeat begins or ends with the bar</source>
        <translation>eine Wiederholung beginnt oder endet mit dem Takt</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/lesson.py"/>
        <source>a section</source>
        <translation>ein Teil</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>a semitone</source>
        <translation>einen Halbton</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a slur cannot be played by the left hand alone</source>
        <translation>ein Bindebogen lässt sich nicht mit der linken Hand allein spielen</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a steadier hand</source>
        <translation>eine ruhigere Hand</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a steadier hand in free moments</source>
        <translation>eine ruhigere Hand in freien Augenblicken</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a stronger finger leads</source>
        <translation>ein stärkerer Finger führt</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a stronger place for finger 2</source>
        <translation>ein stärkerer Platz für Finger 2</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>a tone</source>
        <translation>einen Ganzton</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>a tritone</source>
        <translation>einen Tritonus</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a weaker finger reaches for a far string</source>
        <translation>ein schwächerer Finger greift nach einer fernen Saite</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/menu.py"/>
        <source>a, ring</source>
        <translation>a, Ringfinger</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/practice.py"/>
        <source>about {low} to {high} hours</source>
        <translation>etwa {low} bis {high} Stunden</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/practice.py"/>
        <source>about {low} to {high} minutes</source>
        <translation>etwa {low} bis {high} Minuten</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/words.py"/>
        <source>about {time}</source>
        <translation>etwa {time}</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>accidentals</source>
        <translation>Versetzungszeichen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>add it to the chord at the caret</source>
        <translation>ihn zum Akkord an der Schreibmarke hinzufügen</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/types.py"/>
        <location filename="../../workbench/handout/parts/words.py"/>
        <source>advanced</source>
        <translation>fortgeschritten</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>all fingers within comfort</source>
        <translation>alle Finger im bequemen Bereich</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/offered.py"/>
        <source>all grips on one page</source>
        <translation>alle Griffe auf einer Seite</translation>
    </message>
    <message>
        <location filename="../../workbench/sound/hearing.py"/>
        <source>all notes</source>
        <translation>alle Noten</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>all strings in one stroke</source>
        <translation>alle Saiten in einem Schlag</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/player/bar.py"/>
        <source>alone</source>
        <translation>allein</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/neck/legend.py"/>
        <source>also possible</source>
        <translation>auch möglich</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>alternating fingers</source>
        <translation>Wechselschlag</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>an easier string crossing</source>
        <translation>ein leichterer Saitenwechsel</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>an octave</source>
        <translation>eine Oktave</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>another note that stays has the same name</source>
        <translation>ein anderer Ton, der bleibt, hat denselben Namen</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>arpeggio</source>
        <translation>zerlegter Akkord</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/setting/blocks.py"/>
        <source>arranged by {arranger}</source>
        <translation>bearbeitet von {arranger}</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>as easy</source>
        <translation>gleich leicht</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/legato.py"/>
        <source>as it is</source>
        <translation>wie es ist</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/fit_report.py"/>
        <source>as printed</source>
        <translation>wie gedruckt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/caret.py"/>
        <source>as the key has it</source>
        <translation>wie in der Tonart</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/plan/view.py"/>
        <source>as the piece</source>
        <translation>wie das Stück</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/kit/look.py"/>
        <source>as the system</source>
        <translation>wie das System</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/offered.py"/>
        <source>as they appear</source>
        <translation>wie sie vorkommen</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <location filename="../../workbench/ui/lesson/playing_fields.py"/>
        <source>as written</source>
        <translation>wie notiert</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/playing_fields.py"/>
        <source>as written ({key})</source>
        <translation>wie notiert ({key})</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/playing_fields.py"/>
        <source>as written if it lies well, else its best key</source>
        <translation>wie notiert, wenn es gut liegt, sonst in der besten Tonart</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>as you wished</source>
        <translation>auf Ihren Wunsch</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>asks a reach of {reach} mm</source>
        <translation>verlangt eine Spannweite von {reach} mm</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>asks a reach of {reach} mm (your setting for this hand is {comfort} mm)</source>
        <translation>verlangt eine Spannweite von {reach} mm (für diese Hand eingestellt: {comfort} mm)</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>asks no two fingers at once, where there is a reach of {other} mm</source>
        <translation>verlangt keine zwei Finger zugleich, statt einer Spanne von {other} mm</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/history_dialog.py"/>
        <source>at {bar}</source>
        <translation>{bar}</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/files.py"/>
        <source>at {percent} %</source>
        <translation>bei {percent} %</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>back to fingering</source>
        <translation>zurück zum Fingersatz</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/finger.py"/>
        <location filename="../../workbench/commands/legato.py"/>
        <location filename="../../workbench/commands/read.py"/>
        <source>bar</source>
        <comment>head</comment>
        <translation>Takt</translation>
    </message>
    <message>
        <location filename="../../workbench/music/bar_names.py"/>
        <source>bar {bars}</source>
        <translation>Takt {bars}</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/grips.py"/>
        <location filename="../../workbench/handout/parts/words.py"/>
        <location filename="../../workbench/handout/sheets/grip_sheet.py"/>
        <source>bar {bar}</source>
        <translation>Takt {bar}</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/grips.py"/>
        <source>bar {bar}, beat {beat}</source>
        <translation>Takt {bar}, Schlag {beat}</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>bar {bar}, beat {beat}: {why}</source>
        <translation>Takt {bar}, Schlag {beat}: {why}</translation>
    </message>
    <message>
        <location filename="../../workbench/music/bar_names.py"/>
        <location filename="../../workbench/teaching/scripts/files.py"/>
        <location filename="../../workbench/ui/paper/handout_dialog.py"/>
        <location filename="../../workbench/ui/views/script/page.py"/>
        <source>bar {number}</source>
        <translation>Takt {number}</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/grips.py"/>
        <source>barre</source>
        <comment>grip</comment>
        <translation>Barré</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/shape.py"/>
        <source>barre with finger {finger} at fret {fret}, strings {strings}</source>
        <translation>Barré mit Finger {finger} im Bund {fret}, Saiten {strings}</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <location filename="../../workbench/fingering/telling/comparing.py"/>
        <source>barres</source>
        <translation>Barrés</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/grip_sheet.py"/>
        <location filename="../../workbench/music/bar_names.py"/>
        <location filename="../../workbench/teaching/scripts/files.py"/>
        <source>bars {bars}</source>
        <translation>Takt {bars}</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/grip_sheet.py"/>
        <source>bars {bars}, {n} in all</source>
        <translation>Takt {bars}, insgesamt {n}</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/bars.py"/>
        <location filename="../../workbench/teaching/scripts/spans.py"/>
        <location filename="../../workbench/ui/paper/handout_dialog.py"/>
        <source>bars {first} to {last}</source>
        <translation>Takt {first} bis {last}</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/words.py"/>
        <location filename="../../workbench/ui/notes/scope.py"/>
        <source>bars {first}–{last}</source>
        <translation>Takt {first}–{last}</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/sounds.py"/>
        <source>bass</source>
        <translation>Bass</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/finger.py"/>
        <location filename="../../workbench/commands/legato.py"/>
        <source>beat</source>
        <comment>head</comment>
        <translation>Schlag</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>beat {beat}: {why}</source>
        <translation>Schlag {beat}: {why}</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/comparing.py"/>
        <source>beats cut off</source>
        <translation>abgeschnittene Schläge</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/fit.py"/>
        <location filename="../../workbench/engraving/charts/grades.py"/>
        <source>before</source>
        <translation>vorher</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/types.py"/>
        <location filename="../../workbench/handout/parts/words.py"/>
        <source>beginner</source>
        <translation>Anfänger</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>bell-like scale</source>
        <translation>Glockenleiter</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/changes.py"/>
        <source>best key</source>
        <translation>beste Tonart</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>between staff and tablature</source>
        <translation>zwischen Notensystem und Tabulatur wechseln</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/offered.py"/>
        <source>book</source>
        <translation>Heft</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/finger.py"/>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <location filename="../../workbench/teaching/lessons/bar_rows.py"/>
        <location filename="../../workbench/ui/bars/delegate.py"/>
        <source>cannot be played</source>
        <translation>nicht spielbar</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/backups_dialog.py"/>
        <source>cannot be read</source>
        <translation>nicht lesbar</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/one_sentence.py"/>
        <source>cannot be read or written, for the disk reports an error; try another disk</source>
        <translation>kann nicht gelesen oder geschrieben werden, weil der Datenträger einen Fehler meldet; versuchen Sie es mit einem anderen</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/one_sentence.py"/>
        <source>cannot be written, for the disk is full; make room or choose another disk</source>
        <translation>kann nicht geschrieben werden, weil der Datenträger voll ist; schaffen Sie Platz oder wählen Sie einen anderen</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/one_sentence.py"/>
        <source>cannot be written, for the system sets a limit to the size of files</source>
        <translation>kann nicht geschrieben werden, weil das System die Dateigröße begrenzt</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/words.py"/>
        <location filename="../../workbench/teaching/lessons/lesson.py"/>
        <source>caution</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>change of key</source>
        <translation>Tonartwechsel</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>change of time signature</source>
        <translation>Taktwechsel</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/keys.py"/>
        <source>changed</source>
        <comment>head</comment>
        <translation>geändert</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/features.py"/>
        <source>changes of time</source>
        <translation>Taktwechsel</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>chord name over the caret</source>
        <translation>Akkordname über der Schreibmarke</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>closer to first position</source>
        <translation>näher an der ersten Lage</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/neck/legend.py"/>
        <source>comes from</source>
        <translation>kommt von</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <location filename="../../workbench/teaching/grading/features.py"/>
        <source>compound time</source>
        <translation>zusammengesetzte Taktart</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/neck/legend.py"/>
        <source>cut short</source>
        <translation>gekürzt</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>cuts the {note}</source>
        <translation>kürzt {note}</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>cuts the {note} by a quarter note</source>
        <translation>kürzt das {note} um ein Viertel</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>cuts the {note} by {much} quarter notes</source>
        <translation>kürzt das {note} um {much} Viertel</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/kit/look.py"/>
        <source>dark</source>
        <translation>dunkel</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/backup.py"/>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/plan.py"/>
        <source>days with practice (default 6)</source>
        <translation>Tage mit Üben (sonst 6)</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>delete the note at hand</source>
        <translation>den gewählten Ton löschen</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/bar_rows.py"/>
        <source>difficulty {figure}</source>
        <translation>Schwierigkeit {figure}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>dots; triplet</source>
        <translation>Punkte; Triole</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/marks.py"/>
        <source>dotted half note</source>
        <translation>punktierte Halbe</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/features.py"/>
        <source>dotted notes</source>
        <translation>Punktierungen</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/words.py"/>
        <location filename="../../workbench/ui/writing/marks.py"/>
        <source>dotted quarter note</source>
        <translation>punktierte Viertel</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>dotted rhythm</source>
        <translation>punktierter Rhythmus</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/lengths.py"/>
        <source>dotted {value}</source>
        <translation>punktierte {value}</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/lengths.py"/>
        <source>double dotted {value}</source>
        <translation>doppelt punktierte {value}</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>down an octave</source>
        <translation>eine Oktave abwärts</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>down {interval}</source>
        <translation>{interval} abwärts</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>down {word} octaves</source>
        <translation>{word} Oktaven abwärts</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/changes.py"/>
        <source>dropped</source>
        <translation>weggelassen</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>each finger keeps its string</source>
        <translation>jeder Finger behält seine Saite</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>each finger keeps to its side</source>
        <translation>jeder Finger bleibt auf seiner Seite</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>each note nearer its lowest place</source>
        <translation>jeder Ton näher an seiner tiefsten Stelle</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>each note of the broken chord keeps its string</source>
        <translation>jeder Ton des gebrochenen Akkords behält seine Saite</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/grade.py"/>
        <source>early</source>
        <translation>Anfang</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>easier for both hands together</source>
        <translation>für beide Hände zusammen leichter</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/weights.py"/>
        <location filename="../../workbench/fingering/types.py"/>
        <source>easy</source>
        <translation>leicht</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/offered.py"/>
        <source>easy ones first</source>
        <translation>leichte zuerst</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/keys.py"/>
        <source>effort</source>
        <comment>head</comment>
        <translation>Aufwand</translation>
    </message>
    <message>
        <location filename="../../workbench/language/numbers.py"/>
        <source>eight</source>
        <comment>number</comment>
        <translation>acht</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/lengths.py"/>
        <location filename="../../workbench/ui/writing/marks.py"/>
        <source>eighth note</source>
        <translation>Achtel</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/features.py"/>
        <source>eighth notes</source>
        <translation>Achtel</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/read.py"/>
        <source>ending {endings}</source>
        <translation>Klammer {endings}</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/techniques/rules_music.py"/>
        <source>ending {number}</source>
        <translation>Klammer {number}</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/charts/grades.py"/>
        <source>estimate</source>
        <translation>Schätzung</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/grade.py"/>
        <source>estimate as shipped, whatever was learnt from your grades</source>
        <translation>wie ausgeliefert schätzen, gleich was aus Ihren Stufen gelernt wurde</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>every note stays as it is</source>
        <translation>jeder Ton bleibt, wie er ist</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>everything else about the bar</source>
        <translation>alles Übrige zum Takt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/exercises.py"/>
        <source>exercise</source>
        <translation>Übung</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/batch.py"/>
        <source>failed</source>
        <translation>fehlgeschlagen</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/batch.py"/>
        <source>failed: {reason}</source>
        <translation>fehlgeschlagen: {reason}</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/weights.py"/>
        <source>faithful</source>
        <translation>treu</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>fermata</source>
        <translation>Fermate</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>fewer fingers to put down</source>
        <translation>weniger Finger aufzusetzen</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>fewer notes cut short</source>
        <translation>weniger abgeschnittene Töne</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/sounds.py"/>
        <source>fifth</source>
        <translation>Quinte</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/backup.py"/>
        <source>file</source>
        <translation>Datei</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>finger 1 moves to fret {fret} and lets the {note} go</source>
        <translation>Finger 1 geht in Bund {fret} und lässt {note} los</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>finger 1 reaches less far</source>
        <translation>Finger 1 greift weniger weit</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>finger 1 rolls down to a barre while it holds</source>
        <translation>Finger 1 rollt zum Barré, während er hält</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>finger 1 shares its fret with finger 2 or 3</source>
        <translation>Finger 1 teilt seinen Bund mit Finger 2 oder 3</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>finger 2 has to lie over several strings</source>
        <translation>Finger 2 muss über mehreren Saiten liegen</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>finger 2 need not lie flat</source>
        <translation>Finger 2 muss nicht flach liegen</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>finger 2 on its own fret</source>
        <translation>Finger 2 in seinem eigenen Bund</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>finger 2 reaches to the strings nearest the floor</source>
        <translation>Finger 2 greift zu den Saiten, die dem Boden am nächsten sind</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>finger 2 stands on fret 3, where finger 3 belongs in first position</source>
        <translation>Finger 2 steht im 3. Bund, wo in der ersten Lage Finger 3 hingehört</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>finger 3 has to lie over several strings</source>
        <translation>Finger 3 muss über mehreren Saiten liegen</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>finger 3 is used, a weaker finger</source>
        <translation>Finger 3 wird gebraucht, ein schwächerer Finger</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>finger 3 need not lie flat</source>
        <translation>Finger 3 muss nicht flach liegen</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>finger 3 need not reach over the barre</source>
        <translation>Finger 3 muss nicht über den Barré greifen</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>finger 3 or 4 reaches across to hold a note</source>
        <translation>Finger 3 oder 4 greift quer, um einen Ton zu halten</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>finger 3 reaches over a barre to string 1, where finger 4 comes easier</source>
        <translation>Finger 3 greift über einen Barré zur 1. Saite, wo Finger 4 leichter hinkommt</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>finger 3 stays off the first string</source>
        <translation>Finger 3 bleibt der ersten Saite fern</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>finger 3 stops a string near the floor, where the slanted hand gives it to finger 4</source>
        <translation>Finger 3 greift eine bodennahe Saite, die die schräge Hand dem Finger 4 gibt</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>finger 3 stops the string nearest the floor</source>
        <translation>Finger 3 greift die Saite, die dem Boden am nächsten ist</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>finger 4 bends in to a middle string</source>
        <translation>Finger 4 krümmt sich zu einer mittleren Saite</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>finger 4 has to lie over several strings</source>
        <translation>Finger 4 muss über mehreren Saiten liegen</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>finger 4 is drawn back behind its own fret</source>
        <translation>Finger 4 wird hinter seinen Bund zurückgezogen</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>finger 4 is drawn back beside a barre</source>
        <translation>Finger 4 wird neben einen Barré zurückgezogen</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>finger 4 is used, the weakest finger</source>
        <translation>Finger 4 wird gebraucht, der schwächste Finger</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>finger 4 lies over three strings or more</source>
        <translation>Finger 4 liegt über drei oder mehr Saiten</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>finger 4 need not lie flat</source>
        <translation>Finger 4 muss nicht flach liegen</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>finger 4 need not lie over three strings</source>
        <translation>Finger 4 muss nicht über drei Saiten liegen</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>finger 4 not drawn back</source>
        <translation>Finger 4 nicht zurückgezogen</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>finger 4 not drawn back to the barre</source>
        <translation>Finger 4 nicht zum Barré zurückgezogen</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>finger 4 reaches over to a bass string</source>
        <translation>Finger 4 greift zu einer Basssaite hinüber</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>finger 4 reaches up where the next position has a stronger finger</source>
        <translation>Finger 4 greift hinauf, wo die nächste Lage einen stärkeren Finger hat</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>finger 4 stays near the floor</source>
        <translation>Finger 4 bleibt auf den bodennahen Saiten</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>finger 4 stays on the outer strings</source>
        <translation>Finger 4 bleibt auf den äußeren Saiten</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>finger 4 where the hand's slant favours it</source>
        <translation>Finger 4, wo die Schräge der Hand ihm entgegenkommt</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>finger hop</source>
        <translation>Fingersprung</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>finger swap</source>
        <translation>Fingertausch</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <location filename="../../workbench/teaching/techniques/rules_left.py"/>
        <source>finger {finger}</source>
        <translation>Finger {finger}</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>finger {finger} at fret {fret}</source>
        <translation>Finger {finger} im {fret}. Bund</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>finger {finger} at fret {fret} or above</source>
        <translation>Finger {finger} im {fret}. Bund oder höher</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>finger {finger} at frets {fret} to {last}</source>
        <translation>Finger {finger} im {fret}. bis {last}. Bund</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>finger {finger} cannot stop frets {first} and {second} at once</source>
        <translation>Finger {finger} kann die Bünde {first} und {second} nicht zugleich greifen</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>finger {finger} cannot stop two strings there; only finger 1 lies as a barre, and nothing may sound below it</source>
        <translation>Finger {finger} kann dort nicht zwei Saiten greifen; nur Finger 1 liegt als Barré, und darunter darf nichts klingen</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>finger {finger} hops from string {string} to string {to} (fret {fret}) and cuts the {note}</source>
        <translation>Finger {finger} springt von Saite {string} auf Saite {to} (Bund {fret}) und kürzt {note}</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>finger {finger} hops from string {string} to string {to} (fret {fret}) from bar {from_bar} into bar {to_bar} and cuts the {note}</source>
        <translation>Finger {finger} springt von Saite {string} auf Saite {to} (Bund {fret}) von Takt {from_bar} in Takt {to_bar} und kürzt {note}</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>finger {finger} is needed on string {to} (fret {fret}) and cuts the {note}</source>
        <translation>Finger {finger} wird auf Saite {to} (Bund {fret}) gebraucht und kürzt {note}</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>finger {finger} on string {string}</source>
        <translation>Finger {finger} auf Saite {string}</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>finger {finger} on the {note}</source>
        <translation>Finger {finger} auf {note}</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>finger {finger} on the {nth} {note}</source>
        <translation>Finger {finger} auf dem {nth} {note}</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>finger {first} would stand in front of finger {second}: fret {one} and fret {other}</source>
        <translation>Finger {first} stünde vor Finger {second}: Bund {one} und Bund {other}</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>fingers 1 and 2 are spread wider than one finger a fret</source>
        <translation>Finger 1 und 2 sind weiter gespreizt als ein Finger je Bund</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>fingers 1 and 2 less spread</source>
        <translation>Finger 1 und 2 weniger gespreizt</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>fingers 1 and 2 stand tight where 1 and 3 would hang relaxed</source>
        <translation>Finger 1 und 2 stehen eng, wo 1 und 3 locker hingen</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>fingers 2 and 3 are spread wider than one finger a fret</source>
        <translation>Finger 2 und 3 sind weiter gespreizt als ein Finger je Bund</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>fingers 2 and 3 less spread</source>
        <translation>Finger 2 und 3 weniger gespreizt</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>fingers 2 and 4 have to stand on one fret</source>
        <translation>Finger 2 und 4 müssen in einem Bund stehen</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>fingers 2 and 4 not crowded on one fret</source>
        <translation>Finger 2 und 4 nicht in einem Bund gedrängt</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>fingers 3 and 4 are spread wider than one finger a fret</source>
        <translation>Finger 3 und 4 sind weiter gespreizt als ein Finger je Bund</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>fingers 3 and 4 less spread</source>
        <translation>Finger 3 und 4 weniger gespreizt</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>fingers 3 and 4, the weak pair, work together on the strings nearest the floor</source>
        <translation>Finger 3 und 4, das schwache Paar, greifen zusammen auf den Saiten nahe am Boden</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>fingers less crowded on one fret</source>
        <translation>weniger Gedränge der Finger in einem Bund</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>fingers not bunched</source>
        <translation>Finger nicht gedrängt</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>fingers on neighbouring strings</source>
        <translation>Finger auf benachbarten Saiten</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>fingers on one fret stand closer</source>
        <translation>Finger in einem Bund stehen näher beieinander</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/comparing.py"/>
        <source>fingers put down</source>
        <translation>aufgesetzte Finger</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>fingers stay on their strings</source>
        <translation>die Finger bleiben auf ihren Saiten</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>fingers together</source>
        <translation>Finger zusammen</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>fingers {a} and {b} {frets}, {strings}</source>
        <translation>Finger {a} und {b} {frets}, {strings}</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/shape.py"/>
        <source>fingers {fingers}   reach {reach:.0f} mm, effort {effort}</source>
        <translation>Finger {fingers}   Spannweite {reach:.0f} mm, Aufwand {effort}</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>fingers {first} and {second} would be {apart} mm apart; this hand reaches {most} mm at most</source>
        <translation>Finger {first} und {second} wären {apart} mm auseinander; diese Hand reicht höchstens {most} mm</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>first and last moment of the bar</source>
        <translation>erster und letzter Zeitpunkt des Takts</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>first and second ending</source>
        <translation>erste und zweite Klammer</translation>
    </message>
    <message>
        <location filename="../../workbench/music/telling/form.py"/>
        <source>first and second ending</source>
        <comment>form</comment>
        <translation>erster und zweiter Klammer</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/bars/harmony.py"/>
        <source>first inversion</source>
        <translation>erste Umkehrung</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/words.py"/>
        <source>first steps</source>
        <translation>erste Schritte</translation>
    </message>
    <message>
        <location filename="../../workbench/language/numbers.py"/>
        <source>five</source>
        <comment>number</comment>
        <translation>fünf</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/caret.py"/>
        <source>flat</source>
        <translation>Be</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/transpose.py"/>
        <source>flats</source>
        <translation>B-Vorzeichen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/why_not.py"/>
        <source>for example: 3 2/5 0 2.2m -</source>
        <translation>zum Beispiel: 3 2/5 0 2.2m -</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/offered.py"/>
        <source>for the student</source>
        <translation>für den Schüler</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/offered.py"/>
        <source>for the teacher</source>
        <translation>für die Lehrkraft</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/pack_words.py"/>
        <location filename="../../workbench/ui/window/panels.py"/>
        <location filename="../../workbench/ui/window/recent.py"/>
        <source>for {student}</source>
        <translation>für {student}</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <location filename="../../workbench/handout/parts/words.py"/>
        <location filename="../../workbench/teaching/lessons/lesson.py"/>
        <source>form</source>
        <translation>Form</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/read.py"/>
        <source>form</source>
        <comment>head</comment>
        <translation>Form</translation>
    </message>
    <message>
        <location filename="../../workbench/language/numbers.py"/>
        <source>four</source>
        <comment>number</comment>
        <translation>vier</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/grips.py"/>
        <source>four fingers</source>
        <translation>vier Finger</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/techniques/news.py"/>
        <source>four fingers together</source>
        <translation>vier Finger zusammen</translation>
    </message>
    <message>
        <location filename="../../workbench/music/telling/form.py"/>
        <source>four times</source>
        <translation>viermal</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/charts/lesson.py"/>
        <source>free day</source>
        <translation>freier Tag</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/finger.py"/>
        <source>fret</source>
        <comment>head</comment>
        <translation>Bund</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/grip_boxes.py"/>
        <location filename="../../workbench/handout/parts/words.py"/>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <location filename="../../workbench/teaching/techniques/rules_left.py"/>
        <source>fret {fret}</source>
        <translation>Bund {fret}</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/grip_boxes.py"/>
        <source>fret {fret}, finger {finger}</source>
        <translation>Bund {fret}, Finger {finger}</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/plan_grid.py"/>
        <source>from the last beats of the one into the other, then both whole</source>
        <translation>von den letzten Schlägen des einen in den anderen, dann beide ganz</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <location filename="../../workbench/ui/player/spans.py"/>
        <source>from the note</source>
        <translation>ab der Note</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/files.py"/>
        <source>from {low} to {high} %</source>
        <translation>von {low} auf {high} %</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>full barre</source>
        <translation>großes Barré</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/bars/harmony.py"/>
        <source>full close</source>
        <translation>Ganzschluss</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>further strings of chords and pinches</source>
        <translation>weitere Saiten von Akkorden und Zupfgriffen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>give the note at hand the chosen length</source>
        <translation>dem gewählten Ton den gewählten Wert geben</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>go on by the chosen length</source>
        <translation>um den gewählten Wert weitergehen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/neck/legend.py"/>
        <source>goes to</source>
        <translation>geht nach</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>grace note</source>
        <translation>Vorschlag</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/features.py"/>
        <source>grace notes</source>
        <translation>Vorschläge</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/lessons.py"/>
        <source>grade</source>
        <comment>head</comment>
        <translation>Stufe</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/book.py"/>
        <source>grade {grade}</source>
        <translation>Stufe {grade}</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/calibrate.py"/>
        <location filename="../../workbench/ui/views/grading/view.py"/>
        <location filename="../../workbench/ui/views/plan/view.py"/>
        <source>grade {number}</source>
        <translation>Stufe {number}</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/grade.py"/>
        <source>grade {number}, early</source>
        <translation>Stufe {number}, Anfang</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/grade.py"/>
        <source>grade {number}, late</source>
        <translation>Stufe {number}, Ende</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/grade.py"/>
        <source>grade {number}, middle</source>
        <translation>Stufe {number}, Mitte</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/comparing.py"/>
        <source>greatest reach</source>
        <translation>größte Spannweite</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/offered.py"/>
        <source>grips</source>
        <translation>Griffe</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>guide finger</source>
        <translation>Führungsfinger</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/comparing.py"/>
        <source>guide fingers</source>
        <translation>Führungsfinger</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/bars/harmony.py"/>
        <source>half close</source>
        <translation>Halbschluss</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/words.py"/>
        <location filename="../../workbench/music/edits/lengths.py"/>
        <location filename="../../workbench/ui/writing/marks.py"/>
        <source>half note</source>
        <translation>Halbe</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/offered.py"/>
        <source>handout</source>
        <translation>Blatt</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>harmonic</source>
        <translation>Flageolett</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/playing_fields.py"/>
        <source>heard from the notes</source>
        <translation>aus den Tönen gehört</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/legato.py"/>
        <source>held</source>
        <comment>head</comment>
        <translation>gehalten</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>held notes lower on the neck</source>
        <translation>gehaltene Töne tiefer am Hals</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>held voice</source>
        <translation>gehaltene Stimme</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/finger.py"/>
        <source>held {held} of {duration}</source>
        <translation>{held} von {duration} gehalten</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/comparing.py"/>
        <source>held {held} of {written}</source>
        <translation>gehalten {held} von {written}</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>held {held} of {written} quarters</source>
        <translation>gehalten {held} von {written} Vierteln</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/neck/legend.py"/>
        <source>held, or elsewhere in the bar</source>
        <translation>gehalten oder sonst im Takt</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>highest fret</source>
        <translation>höchster Bund</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>holds the {note} longer, by a quarter note</source>
        <translation>hält das {note} um ein Viertel länger</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>holds the {note} longer, by {much} quarter notes</source>
        <translation>hält das {note} um {much} Viertel länger</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/comparing.py"/>
        <source>hops</source>
        <translation>Sprünge</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/finger.py"/>
        <source>how</source>
        <comment>head</comment>
        <translation>wie</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/menu.py"/>
        <source>i, index</source>
        <translation>i, Zeigefinger</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/finger.py"/>
        <location filename="../../workbench/commands/lessons.py"/>
        <source>id</source>
        <comment>head</comment>
        <translation>Kennung</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/why_not.py"/>
        <source>in a new remark</source>
        <translation>in einem neuen Unterrichtshinweis</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/shortcut_list.py"/>
        <source>in a remark: keep what is written</source>
        <translation>in einem Unterrichtshinweis: das Geschriebene übernehmen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/shortcut_list.py"/>
        <source>in the other fingerings: take the selected one</source>
        <translation>in den anderen Fingersätzen: den gewählten nehmen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/shortcut_list.py"/>
        <source>in the practice plan: tick the selected item</source>
        <translation>im Übeplan: den gewählten Punkt abhaken</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/shortcut_list.py"/>
        <source>in the reading view: go on; Page Up or Backspace go back</source>
        <translation>in der Leseansicht: weiter; Bild auf oder Rücktaste gehen zurück</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/shortcut_list.py"/>
        <source>in the reading view: larger, smaller, dark or light, close</source>
        <translation>in der Leseansicht: größer, kleiner, dunkel oder hell, schließen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/why_not.py"/>
        <source>in the remark: {words}</source>
        <translation>im Hinweis: {words}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/shortcut_list.py"/>
        <source>in the script: write the bar's words; Ctrl+Return keeps them, Esc leaves them</source>
        <translation>im Skript: den Text des Takts schreiben; Strg+Eingabe übernimmt, Esc verwirft</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>in the tablature: the fret on the caret's string</source>
        <translation>in der Tabulatur: der Bund auf der Saite der Schreibmarke</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/legato.py"/>
        <source>in this bar</source>
        <translation>in diesem Takt</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/sounds.py"/>
        <source>inner motion</source>
        <translation>Mittelstimme</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/lessons.py"/>
        <source>instrument</source>
        <comment>head</comment>
        <translation>Instrument</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/words.py"/>
        <source>intermediate</source>
        <translation>Mittelstufe</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/bars/harmony.py"/>
        <source>interrupted close</source>
        <translation>Trugschluss</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/one_sentence.py"/>
        <source>is a folder that is not empty; choose another name</source>
        <translation>ist ein Ordner, der nicht leer ist; wählen Sie einen anderen Namen</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/one_sentence.py"/>
        <source>is a folder; name a file</source>
        <translation>ist ein Ordner; nennen Sie eine Datei</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/scores_dialog.py"/>
        <source>is being read …</source>
        <translation>wird gelesen …</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/one_sentence.py"/>
        <source>is in the way; choose another name</source>
        <translation>ist im Weg; wählen Sie einen anderen Namen</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/one_sentence.py"/>
        <source>is not there; check the name and the folder</source>
        <translation>ist nicht vorhanden; prüfen Sie Namen und Ordner</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/one_sentence.py"/>
        <source>is too long a name; choose a shorter one</source>
        <translation>hat einen zu langen Namen; wählen Sie einen kürzeren</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>it is not played</source>
        <translation>der Ton wird nicht gespielt</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>it lies on the high fourth string, above the inner notes</source>
        <translation>er liegt auf der hohen vierten Saite, über den Mittelstimmen</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/techniques/rules_left.py"/>
        <source>its string is needed for another note</source>
        <translation>seine Saite wird für einen anderen Ton gebraucht</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/legato.py"/>
        <source>its string is taken</source>
        <translation>die Saite wird gebraucht</translation>
    </message>
    <message>
        <location filename="../../workbench/store/backups.py"/>
        <source>its texts are no texts any more</source>
        <translation>ihre Texte sind keine Texte mehr</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/plan_grid.py"/>
        <source>join</source>
        <comment>plan</comment>
        <translation>Übergang</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/plan_grid.py"/>
        <source>join {where}</source>
        <translation>Übergang {where}</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/charts/lesson.py"/>
        <source>joins</source>
        <translation>Übergänge</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>keeps the {note} to its full length</source>
        <translation>hält {note} in voller Länge</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>keeps to the chosen alternation</source>
        <translation>bleibt beim gewählten Wechselschlag</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <location filename="../../workbench/arranging/changes.py"/>
        <source>key</source>
        <translation>Tonart</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/keys.py"/>
        <location filename="../../workbench/commands/lessons.py"/>
        <source>key</source>
        <comment>head</comment>
        <translation>Tonart</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <source>large</source>
        <translation>groß</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/grade.py"/>
        <source>late</source>
        <translation>Ende</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/words.py"/>
        <source>leads to another lesson</source>
        <translation>verweist auf eine andere Lektion</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>leap in the form</source>
        <translation>Sprung in der Form</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/fit.py"/>
        <source>learn from the grades you gave to lessons, not from pins and choices</source>
        <translation>aus den Stufen lernen, die Sie Lektionen gegeben haben, nicht aus Festlegungen und Entscheidungen</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/fit.py"/>
        <source>learn from the left fingers that these scores print</source>
        <translation>aus den linken Fingern lernen, die diese Noten drucken</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>leaves lower fingers free</source>
        <translation>lässt tiefere Finger frei</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/finger.py"/>
        <source>left</source>
        <comment>head</comment>
        <translation>links</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/finger_keys.py"/>
        <source>left finger (0: open string)</source>
        <translation>linker Finger (0: leere Saite)</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>left finger {finger}</source>
        <translation>linker Finger {finger}</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>left fingers are 0 for the open string and 1 to 4</source>
        <translation>Finger der linken Hand sind 0 für die leere Saite und 1 bis 4</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <location filename="../../workbench/handout/parts/words.py"/>
        <location filename="../../workbench/teaching/lessons/lesson.py"/>
        <source>left hand</source>
        <translation>linke Hand</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <location filename="../../workbench/teaching/techniques/exercises.py"/>
        <source>left hand alone</source>
        <translation>linke Hand allein</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>left-hand changes</source>
        <translation>Wechsel der linken Hand</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>less left to open strings</source>
        <translation>weniger leere Saiten</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>less moving between notes of a tune</source>
        <translation>weniger Wege zwischen Melodietönen</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>less reaching across for held notes</source>
        <translation>weniger Quergreifen für gehaltene Töne</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>less reaching against the slant of the hand</source>
        <translation>weniger Greifen gegen die Schräge der Hand</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>less shifting</source>
        <translation>weniger Lagenwechsel</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>less shifting while fingers are busy</source>
        <translation>weniger Lagenwechsel mit beschäftigten Fingern</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>less sliding</source>
        <translation>weniger Gleiten</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>less stretch</source>
        <translation>weniger Spreizung</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/features.py"/>
        <source>less than {value}</source>
        <translation>weniger als {value}</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>less work for finger 3</source>
        <translation>weniger Arbeit für Finger 3</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>less work for finger 4</source>
        <translation>weniger Arbeit für Finger 4</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>less work for finger 4 up the neck</source>
        <translation>weniger Arbeit für Finger 4 in der Höhe</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/backup.py"/>
        <source>lessons</source>
        <translation>Lektionen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/next.py"/>
        <source>lessons for nobody by name</source>
        <translation>Lektionen ohne Namen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/finger_keys.py"/>
        <source>let the note free again (or the whole bar)</source>
        <translation>den Ton wieder freigeben (oder den ganzen Takt)</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/one_sentence.py"/>
        <source>lies on a disk that may only be read; choose another place</source>
        <translation>liegt auf einem schreibgeschützten Datenträger; wählen Sie einen anderen Ort</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/one_sentence.py"/>
        <source>lies under something that is no folder; choose another place</source>
        <translation>liegt unter etwas, das kein Ordner ist; wählen Sie einen anderen Ort</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/kit/look.py"/>
        <source>light</source>
        <translation>hell</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/words.py"/>
        <location filename="../../workbench/teaching/lessons/lesson.py"/>
        <source>listening</source>
        <translation>Hören</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>longer held notes</source>
        <translation>länger gehaltene Töne</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <location filename="../../workbench/teaching/techniques/exercises.py"/>
        <source>loop</source>
        <translation>Schleife</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/legato.py"/>
        <source>lost</source>
        <comment>head</comment>
        <translation>verloren</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/player/bar.py"/>
        <source>louder</source>
        <translation>lauter</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/words.py"/>
        <source>lower intermediate</source>
        <translation>untere Mittelstufe</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>lower on the neck</source>
        <translation>tiefer am Hals</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/menu.py"/>
        <source>m, middle</source>
        <translation>m, Mittelfinger</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/one_sentence.py"/>
        <source>may not be read or written; choose another place or change its rights</source>
        <translation>darf nicht gelesen oder geschrieben werden; wählen Sie einen anderen Ort oder ändern Sie die Rechte</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <source>medium</source>
        <translation>mittel</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/types.py"/>
        <location filename="../../workbench/teaching/grading/grade.py"/>
        <source>middle</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>minor section</source>
        <translation>Mollteil</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/grade.py"/>
        <source>minutes of practice a day (default 20)</source>
        <translation>Übeminuten am Tag (sonst 20)</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/charts/lesson.py"/>
        <source>most effort</source>
        <translation>größter Aufwand</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>move the caret through moments and lines</source>
        <translation>Schreibmarke zwischen Zeitpunkten und Linien bewegen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>move the note at hand by a step; with Shift a semitone</source>
        <translation>den gewählten Ton um eine Stufe verschieben; mit Umschalt um einen Halbton</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>move the note at hand by an octave</source>
        <translation>den gewählten Ton um eine Oktave verschieben</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/finger_keys.py"/>
        <source>move the note to the string above or below</source>
        <translation>den Ton auf die Saite darüber oder darunter setzen</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/comparing.py"/>
        <source>moves of the hand</source>
        <translation>Lagenwechsel</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/offered.py"/>
        <source>music</source>
        <translation>Noten</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/read.py"/>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/caret.py"/>
        <source>natural</source>
        <translation>Auflösungszeichen</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>near the nut, a finger is bunched lower than its own fret</source>
        <translation>nahe am Sattel steht ein Finger tiefer als sein Bund</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>near the nut, the whole hand leaves finger 1 on fret 1, 2 on 2, 3 on 3</source>
        <translation>nahe am Sattel verlässt die ganze Hand die Ordnung Finger 1 im 1., 2 im 2., 3 im 3. Bund</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>needs only {reach} mm of reach instead of {other}</source>
        <translation>braucht nur {reach} mm Spannweite statt {other}</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>neighbouring fingers twist against the slant of the hand</source>
        <translation>benachbarte Finger verdrehen sich gegen die Schräge der Hand</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/charts/lesson.py"/>
        <source>new bars</source>
        <translation>neue Takte</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>next shorter or longer value</source>
        <translation>nächstkürzerer oder nächstlängerer Wert</translation>
    </message>
    <message>
        <location filename="../../workbench/language/numbers.py"/>
        <source>nine</source>
        <comment>number</comment>
        <translation>neun</translation>
    </message>
    <message>
        <location filename="../../workbench/language/numbers.py"/>
        <source>no</source>
        <comment>number</comment>
        <translation>kein</translation>
    </message>
    <message>
        <location filename="../../workbench/music/bar_names.py"/>
        <source>no bar</source>
        <translation>kein Takt</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>no barre among open strings</source>
        <translation>kein Barré zwischen leeren Saiten</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>no barre arching over an open string</source>
        <translation>kein Barré, der sich über eine leere Saite wölbt</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>no barre beneath another finger</source>
        <translation>kein Barré unter einem anderen Finger</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>no barre on inner strings</source>
        <translation>kein Barré auf inneren Saiten</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>no barre over a silent string</source>
        <translation>kein Barré über einer stummen Saite</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>no change of position while fingers are busy</source>
        <translation>kein Lagenwechsel, während Finger beschäftigt sind</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/shape.py"/>
        <source>no common chord</source>
        <translation>kein gebräuchlicher Akkord</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>no crossed fingers</source>
        <translation>keine gekreuzten Finger</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>no crowding on one fret</source>
        <translation>kein Gedränge in einem Bund</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/shelf.py"/>
        <source>no earlier lessons {whose}</source>
        <translation>keinen früheren Lektionen {whose}</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>no finger drawn back</source>
        <translation>kein Finger zurückgezogen</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>no finger skipped</source>
        <translation>kein Finger übersprungen</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>no finger skipped beside the barre</source>
        <translation>kein ausgelassener Finger neben dem Barré</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>no finger slides out of a sounding note</source>
        <translation>kein Finger rutscht aus einem klingenden Ton</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>no finger takes another's place</source>
        <translation>kein Finger löst einen anderen ab</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>no finger twice running</source>
        <translation>kein Finger zweimal hintereinander</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>no fret above {fret}, {open} open strings</source>
        <translation>kein Bund über {fret}, {open} leere Saiten</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>no hand holds {notes} like this together</source>
        <translation>keine Hand hält {notes} so zusammen</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>no hand position reaches {notes} together</source>
        <translation>keine Handstellung erreicht {notes} zusammen</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>no hand reaches it together with the others</source>
        <translation>keine Hand erreicht ihn mit den anderen zusammen</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>no hop</source>
        <translation>kein Sprung</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>no hop across the strings</source>
        <translation>kein Sprung quer über die Saiten</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>no new barre</source>
        <translation>kein neues Barré</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>no open string struck beneath a laid finger</source>
        <translation>keine leere Saite unter einem liegenden Finger</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>no other difference</source>
        <translation>kein weiterer Unterschied</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/marks.py"/>
        <source>no pickup</source>
        <translation>kein Auftakt</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>no place: {reason}</source>
        <translation>kein Platz: {reason}</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>no rolling of finger 1</source>
        <translation>kein Rollen von Finger 1</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/bars/form_words.py"/>
        <source>no sharp or flat</source>
        <translation>weder Kreuz noch Be</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <location filename="../../workbench/teaching/grading/features.py"/>
        <source>no sharps or flats</source>
        <translation>keine Vorzeichen</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>no spread finger lying flat</source>
        <translation>kein gespreizter Finger, der flach liegt</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>no string sounds {pitch} at fret {fret}</source>
        <translation>keine Saite gibt im Bund {fret} den Ton {pitch}</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>no twisting against the slant of the hand</source>
        <translation>kein Verdrehen gegen die Schräge der Hand</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>no wide barre of a weaker finger</source>
        <translation>kein breiter Barré eines schwächeren Fingers</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/lessons.py"/>
        <source>nobody by name</source>
        <translation>jemanden ohne Namen</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <location filename="../../workbench/ui/writing/marks.py"/>
        <source>none</source>
        <translation>keine Angabe</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/words.py"/>
        <location filename="../../workbench/ui/lesson/playing_fields.py"/>
        <source>none</source>
        <comment>capo</comment>
        <translation>keiner</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/features.py"/>
        <source>none</source>
        <comment>demand</comment>
        <translation>keine</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>not at all</source>
        <translation>gar nicht</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <location filename="../../workbench/ui/views/grading/grades_dialog.py"/>
        <source>not given</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/view.py"/>
        <source>not given yet</source>
        <translation>noch nicht angegeben</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/comparing.py"/>
        <location filename="../../workbench/handout/parts/grip_boxes.py"/>
        <source>not played</source>
        <translation>nicht gespielt</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/finger.py"/>
        <source>not proved least</source>
        <translation>nicht nachweislich minimal</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/finger.py"/>
        <location filename="../../workbench/commands/legato.py"/>
        <source>note</source>
        <comment>head</comment>
        <translation>Ton</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/teacher.py"/>
        <source>note</source>
        <comment>music</comment>
        <translation>Ton</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>note let go early</source>
        <translation>früh losgelassener Ton</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>note tied over the bar line</source>
        <translation>über den Taktstrich gebundener Ton</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/read.py"/>
        <source>notes</source>
        <translation>Töne</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/read.py"/>
        <source>notes</source>
        <comment>head</comment>
        <translation>Töne</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/comparing.py"/>
        <source>notes cut</source>
        <translation>gekürzte Töne</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>notes sounding together</source>
        <translation>Töne, die zugleich klingen</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>notes that have to be cut</source>
        <translation>Töne, die gekürzt werden müssen</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/grade.py"/>
        <source>nothing beyond first lessons</source>
        <translation>nichts über den Anfangsunterricht hinaus</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>nothing but open strings sounds</source>
        <translation>nur leere Saiten klingen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/exercise_files.py"/>
        <source>nothing could be written</source>
        <translation>es ließ sich nichts schreiben</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/techniques/news.py"/>
        <source>nothing in particular</source>
        <translation>nichts Bestimmtes</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/techniques/news.py"/>
        <source>nothing new</source>
        <translation>nichts Neues</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/next.py"/>
        <location filename="../../workbench/ui/views/techniques/shelf.py"/>
        <source>nothing of its own</source>
        <translation>nichts Eigenes</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/fit.py"/>
        <location filename="../../workbench/engraving/charts/grades.py"/>
        <location filename="../../workbench/ui/keeping/history_dialog.py"/>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/backup.py"/>
        <source>number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/changes.py"/>
        <source>octave</source>
        <translation>Oktave</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/shelf.py"/>
        <source>of {student}</source>
        <translation>von {student}</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/batch.py"/>
        <source>ok</source>
        <translation>ok</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>on neighbouring frets</source>
        <translation>in benachbarten Bünden</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>on one fret</source>
        <translation>in einem Bund</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/finger_keys.py"/>
        <source>on the fretboard: all frets, or those that the piece uses</source>
        <translation>auf dem Griffbrett: alle Bünde, oder nur die, die das Stück braucht</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/finger_keys.py"/>
        <source>on the fretboard: along the neck</source>
        <translation>auf dem Griffbrett: am Hals entlang</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/finger_keys.py"/>
        <source>on the fretboard: pin the note as it is fingered</source>
        <translation>auf dem Griffbrett: den Ton so festlegen, wie er gegriffen ist</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/finger_keys.py"/>
        <source>on the fretboard: the same; in the bar list: previous or next bar</source>
        <translation>auf dem Griffbrett: ebenso; in der Taktliste: voriger oder nächster Takt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/finger_keys.py"/>
        <source>on the fretboard: zoom</source>
        <translation>auf dem Griffbrett: Größe</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>on the staff: whole, half, quarter, eighth, 16th, 32nd</source>
        <translation>im Notensystem: Ganze, Halbe, Viertel, Achtel, 16tel, 32stel</translation>
    </message>
    <message>
        <location filename="../../workbench/music/telling/form.py"/>
        <source>once</source>
        <translation>einmal</translation>
    </message>
    <message>
        <location filename="../../workbench/language/numbers.py"/>
        <source>one</source>
        <comment>number</comment>
        <translation>ein</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/lesson.py"/>
        <source>one bar</source>
        <translation>ein Takt</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/lesson.py"/>
        <source>one note</source>
        <translation>ein Ton</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>one quarter</source>
        <translation>einer Viertel</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/choosing.py"/>
        <source>one tune</source>
        <translation>ein Stück</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/grip_boxes.py"/>
        <source>open</source>
        <comment>string</comment>
        <translation>leer</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/features.py"/>
        <source>open strings only</source>
        <translation>nur leere Saiten</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/why_table.py"/>
        <source>p thumb, i index, m middle, a ring</source>
        <translation>p Daumen, i Zeigefinger, m Mittelfinger, a Ringfinger</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/menu.py"/>
        <source>p, thumb</source>
        <translation>p, Daumen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/sound_files.py"/>
        <source>pack</source>
        <translation>Paket</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/batch.py"/>
        <source>pages</source>
        <translation>Seiten</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/read.py"/>
        <source>part</source>
        <translation>Part</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/items.py"/>
        <source>part {k} of {of}: {first} to {last} as played</source>
        <translation>Abschnitt {k} von {of}: {first} bis {last} in Spielfolge</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>partial barre</source>
        <translation>Teilbarré</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/script.py"/>
        <source>pass over what this student's (or group's) earlier lessons in the store taught</source>
        <translation>übergehen, was frühere gespeicherte Lektionen dieses Schülers (oder dieser Gruppe) gelehrt haben</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/changes.py"/>
        <source>phrase</source>
        <translation>Phrase</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <location filename="../../workbench/commands/read.py"/>
        <location filename="../../workbench/music/bar_names.py"/>
        <location filename="../../workbench/teaching/scripts/files.py"/>
        <source>pickup</source>
        <translation>Auftakt</translation>
    </message>
    <message>
        <location filename="../../workbench/music/bar_names.py"/>
        <source>pickup, {bars}</source>
        <translation>Auftakt, {bars}</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/offered.py"/>
        <source>picture</source>
        <translation>Bild</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/fit.py"/>
        <source>piece</source>
        <translation>Stück</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>pinch of thumb and finger</source>
        <translation>Zangengriff mit Daumen und Finger</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/techniques/news.py"/>
        <source>pinch of thumb and fingers</source>
        <translation>Zangengriff mit Daumen und Fingern</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>pinched chord with p i m</source>
        <translation>zusammen gezupfter Akkord mit p i m</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>pinched chord with p i m a</source>
        <translation>zusammen gezupfter Akkord mit p i m a</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <location filename="../../workbench/ui/neck/legend.py"/>
        <source>pinned</source>
        <translation>festgelegt</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/read.py"/>
        <source>pitches</source>
        <comment>head</comment>
        <translation>Tonhöhen</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>places the left fingers have to know</source>
        <translation>Plätze, die die Finger der linken Hand kennen müssen</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/bars/harmony.py"/>
        <source>plagal close</source>
        <translation>Plagalschluss</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/comparing.py"/>
        <source>planted</source>
        <translation>liegen gelassen</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>planted finger</source>
        <translation>liegen gelassener Finger</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/plan_grid.py"/>
        <source>play through</source>
        <translation>Durchspielen</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/weights.py"/>
        <source>playable</source>
        <translation>spielbar</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>playing above the fourth fret</source>
        <translation>Spiel über dem vierten Bund</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>playing in position</source>
        <translation>Spiel in der Lage</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/charts/lesson.py"/>
        <source>playing through</source>
        <translation>Durchspielen</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/one_sentence.py"/>
        <source>please report it</source>
        <translation>bitte melden Sie ihn</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/one_sentence.py"/>
        <source>please report it with the file {log}</source>
        <translation>bitte melden Sie ihn mit der Datei {log}</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/scripts/words.py"/>
        <location filename="../../workbench/teaching/techniques/news.py"/>
        <location filename="../../workbench/teaching/techniques/rules_left.py"/>
        <source>position {position}</source>
        <translation>Lage {position}</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>positions</source>
        <translation>Lagen</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/offered.py"/>
        <location filename="../../workbench/ui/views/plan/view.py"/>
        <source>practice plan</source>
        <translation>Übeplan</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/finger_keys.py"/>
        <source>previous or next note</source>
        <translation>voriger oder nächster Ton</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/scores_dialog.py"/>
        <source>prints no left fingers or strings, and is passed over</source>
        <translation>enthält keine Finger der linken Hand und keine Saiten und wird übergangen</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/finger.py"/>
        <source>proved least</source>
        <translation>nachweislich minimal</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/words.py"/>
        <location filename="../../workbench/music/edits/lengths.py"/>
        <location filename="../../workbench/ui/writing/marks.py"/>
        <source>quarter note</source>
        <translation>Viertel</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>range</source>
        <translation>Umfang</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/read.py"/>
        <source>range (MIDI)</source>
        <translation>Umfang (MIDI)</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/batch.py"/>
        <source>reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/grips.py"/>
        <source>remark {number}</source>
        <translation>Hinweis {number}</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/read.py"/>
        <location filename="../../workbench/teaching/lessons/bar_rows.py"/>
        <source>repeat</source>
        <translation>Wiederholung</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/read.py"/>
        <location filename="../../workbench/teaching/lessons/bar_rows.py"/>
        <source>repeat from here</source>
        <translation>Wiederholung ab hier</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/read.py"/>
        <source>repeat, {times} times in all</source>
        <translation>Wiederholung, insgesamt {times}-mal</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>repeated notes</source>
        <translation>Tonwiederholung</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/plan_grid.py"/>
        <source>rest</source>
        <comment>day</comment>
        <translation>frei</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>rest stroke</source>
        <translation>angelegter Anschlag</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/charts/lesson.py"/>
        <source>review</source>
        <translation>Auffrischen</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <location filename="../../resources/techniques/grading.json"/>
        <location filename="../../workbench/handout/parts/words.py"/>
        <location filename="../../workbench/teaching/lessons/lesson.py"/>
        <source>rhythm</source>
        <translation>Rhythmus</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <location filename="../../workbench/teaching/techniques/exercises.py"/>
        <source>rhythm alone</source>
        <translation>Rhythmus allein</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/finger.py"/>
        <source>right</source>
        <comment>head</comment>
        <translation>rechts</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>right finger {finger}</source>
        <translation>rechter Finger {finger}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/finger_keys.py"/>
        <source>right finger: thumb, index, middle, ring</source>
        <translation>rechter Finger: Daumen, Zeige-, Mittel-, Ringfinger</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <location filename="../../workbench/handout/parts/words.py"/>
        <location filename="../../workbench/teaching/lessons/lesson.py"/>
        <source>right hand</source>
        <translation>rechte Hand</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <location filename="../../workbench/teaching/techniques/exercises.py"/>
        <source>right hand alone</source>
        <translation>rechte Hand allein</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/scripts/files.py"/>
        <source>right hand {pattern}</source>
        <translation>rechte Hand {pattern}</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>right-hand patterns</source>
        <translation>Muster der rechten Hand</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/sounds.py"/>
        <source>root</source>
        <translation>Grundton</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/bars/likeness.py"/>
        <source>same grips as bar {bar}</source>
        <translation>gleiche Griffe wie in Takt {bar}</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/bars/likeness.py"/>
        <source>same grips as the pickup</source>
        <translation>gleiche Griffe wie im Auftakt</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/bars/likeness.py"/>
        <source>same music as bar {bar}</source>
        <translation>gleiche Musik wie in Takt {bar}</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>same music as bar {bar}, other fingers: what stands around it leaves no fingering in common</source>
        <translation>gleiche Musik wie Takt {bar}, andere Finger: die Umgebung lässt keinen gemeinsamen Fingersatz zu</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>same music as bar {bar}, other fingers: with the same ones {reason}</source>
        <translation>gleiche Musik wie Takt {bar}, andere Finger: mit denselben gilt: {reason}</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/bars/likeness.py"/>
        <source>same music as the pickup</source>
        <translation>gleiche Musik wie im Auftakt</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/bars/likeness.py"/>
        <source>same right-hand pattern as bar {bar}</source>
        <translation>rechte Hand wie in Takt {bar}</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/bars/likeness.py"/>
        <source>same right-hand pattern as the pickup</source>
        <translation>rechte Hand wie im Auftakt</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/batch.py"/>
        <source>score</source>
        <translation>Noten</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/view.py"/>
        <source>script</source>
        <translation>Skript</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/bars/harmony.py"/>
        <source>second inversion</source>
        <translation>zweite Umkehrung</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/batch.py"/>
        <source>seconds</source>
        <translation>Sekunden</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/bar_rows.py"/>
        <location filename="../../workbench/ui/notes/scope.py"/>
        <source>section {letter}</source>
        <translation>Teil {letter}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/finger_keys.py"/>
        <source>select no note</source>
        <translation>keinen Ton wählen</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/keys.py"/>
        <source>semitones</source>
        <comment>head</comment>
        <translation>Halbtöne</translation>
    </message>
    <message>
        <location filename="../../workbench/language/numbers.py"/>
        <source>seven</source>
        <comment>number</comment>
        <translation>sieben</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/sounds.py"/>
        <source>seventh</source>
        <translation>Septime</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/lesson.py"/>
        <source>several bars</source>
        <translation>mehrere Takte</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/caret.py"/>
        <source>sharp</source>
        <translation>Kreuz</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/transpose.py"/>
        <source>sharps</source>
        <translation>Kreuze</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>shift</source>
        <translation>Lagenwechsel</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>shift on an open string</source>
        <translation>Lagenwechsel auf leerer Saite</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>shifts</source>
        <translation>Lagenwechsel</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/changes.py"/>
        <source>shortened</source>
        <translation>gekürzt</translation>
    </message>
    <message>
        <location filename="../../workbench/language/numbers.py"/>
        <source>six</source>
        <comment>number</comment>
        <translation>sechs</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/features.py"/>
        <source>sixteenth notes</source>
        <translation>Sechzehntel</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/techniques/rules_left.py"/>
        <source>sixths</source>
        <translation>Sexten</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>skipping a string</source>
        <translation>Saite überspringen</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <location filename="../../workbench/teaching/techniques/exercises.py"/>
        <source>slow</source>
        <translation>langsam</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>slur downwards</source>
        <translation>Abwärtsbindung</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>slur upwards</source>
        <translation>Aufwärtsbindung</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>slurs lie on one string</source>
        <translation>Bindungen liegen auf einer Saite</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <source>small</source>
        <translation>klein</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/offered.py"/>
        <source>some bars as a picture</source>
        <translation>einige Takte als Bild</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <location filename="../../workbench/handout/parts/words.py"/>
        <location filename="../../workbench/teaching/lessons/lesson.py"/>
        <location filename="../../workbench/ui/window/sound_files.py"/>
        <source>sound</source>
        <translation>Klang</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/neck/legend.py"/>
        <source>sounds now</source>
        <translation>klingt jetzt</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/weights.py"/>
        <source>sparse</source>
        <translation>sparsam</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>speed of left-hand changes</source>
        <translation>Tempo der Wechsel der linken Hand</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>speed of the notes</source>
        <translation>Tempo der Töne</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>spell the note at hand otherwise</source>
        <translation>den gewählten Ton enharmonisch anders schreiben</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>staccato</source>
        <translation>staccato</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/read.py"/>
        <source>staves</source>
        <translation>Systeme</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/neck/legend.py"/>
        <source>stays down</source>
        <translation>bleibt liegen</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>stays in first position</source>
        <translation>bleibt in der ersten Lage</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>stretch</source>
        <translation>Spreizung</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/grips.py"/>
        <source>stretch</source>
        <comment>grip</comment>
        <translation>Spreizung</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/finger.py"/>
        <source>string</source>
        <comment>head</comment>
        <translation>Saite</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/techniques/rules_right.py"/>
        <source>string {first} to {second}</source>
        <translation>Saite {first} zu {second}</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <location filename="../../workbench/ui/writing/caret.py"/>
        <source>string {string}</source>
        <translation>Saite {string}</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>string {string} does not sound {pitch}</source>
        <translation>Saite {string} gibt {pitch} nicht her</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>string {string} fret {fret}</source>
        <translation>Saite {string} Bund {fret}</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/comparing.py"/>
        <source>string {string} fret {fret} finger {finger} {right}</source>
        <translation>Saite {string} Bund {fret} Finger {finger} {right}</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>string {string} is taken by the {taker}, which ends the {note}</source>
        <translation>Saite {string} wird für {taker} gebraucht, damit endet {note}</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <location filename="../../workbench/ui/notes/rejected.py"/>
        <source>string {string} open</source>
        <translation>Saite {string} leer</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/grip_boxes.py"/>
        <source>string {string} {words}</source>
        <translation>Saite {string} {words}</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <location filename="../../workbench/ui/choices/why_table.py"/>
        <location filename="../../workbench/ui/notes/rejected.py"/>
        <source>string {string}, fret {fret}</source>
        <translation>Saite {string}, Bund {fret}</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>string {string}, fret {fret} sounds {sounds}, not {pitch}</source>
        <translation>auf Saite {string} klingt im Bund {fret} {sounds}, nicht {pitch}</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>strings in the order of the notes</source>
        <translation>Saiten in der Folge der Töne</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/comparing.py"/>
        <source>strings played open</source>
        <translation>leer gespielte Saiten</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>strum</source>
        <translation>Durchschlagen</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/lessons.py"/>
        <source>student</source>
        <comment>head</comment>
        <translation>Schüler:in</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/offered.py"/>
        <source>student's page</source>
        <translation>Schülerblatt</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <location filename="../../workbench/teaching/grading/features.py"/>
        <source>syncopation</source>
        <translation>Synkope</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/fit.py"/>
        <source>take the last fit back</source>
        <translation>die letzte Anpassung zurücknehmen</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/charts/grades.py"/>
        <source>teacher's grade</source>
        <translation>Stufe der Lehrkraft</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/offered.py"/>
        <source>teacher's sheet</source>
        <translation>Lehrerblatt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/words.py"/>
        <source>tells why another fingering was not taken</source>
        <translation>sagt, warum ein anderer Fingersatz nicht gewählt wurde</translation>
    </message>
    <message>
        <location filename="../../workbench/language/numbers.py"/>
        <source>ten</source>
        <comment>number</comment>
        <translation>zehn</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/fit.py"/>
        <source>term</source>
        <translation>Merkmal</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/techniques/rules_left.py"/>
        <source>the barre comes or goes</source>
        <translation>der Barré kommt oder geht</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the bass is not taken by the thumb</source>
        <translation>der Bass wird nicht mit dem Daumen genommen</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the broken chord rings on</source>
        <translation>der gebrochene Akkord klingt weiter</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/page.py"/>
        <source>the closing</source>
        <translation>den Schluss</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/bars/form_words.py"/>
        <source>the dominant</source>
        <translation>die Dominante</translation>
    </message>
    <message>
        <location filename="../../workbench/music/telling/form.py"/>
        <source>the end of {letter}</source>
        <translation>das Ende von {letter}</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/techniques/rules_left.py"/>
        <source>the finger is needed on another string</source>
        <translation>der Finger wird auf einer anderen Saite gebraucht</translation>
    </message>
    <message>
        <location filename="../../workbench/sound/hearing.py"/>
        <source>the fingers</source>
        <translation>die Finger</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the fingers do not lie on neighbouring strings</source>
        <translation>die Finger liegen nicht auf benachbarten Saiten</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the fingers keep the melody</source>
        <translation>die Finger behalten die Melodie</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/fit_report.py"/>
        <source>the first choice</source>
        <translation>die erste Wahl</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/techniques/news.py"/>
        <source>the grip {grip}</source>
        <translation>der Griff {grip}</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>the hand cannot hold the {note} and reach the next grip in comfort</source>
        <translation>die Hand kann {note} nicht halten und zugleich den nächsten Griff bequem erreichen</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the hand changes position while fingers are busy</source>
        <translation>die Hand wechselt die Lage, während Finger beschäftigt sind</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the hand changes position with no finger to guide it</source>
        <translation>die Hand wechselt die Lage ohne Führungsfinger</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/techniques/rules_left.py"/>
        <source>the hand does not reach so far</source>
        <translation>die Hand reicht nicht so weit</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the hand in first position</source>
        <translation>die Hand in der ersten Lage</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the hand is stretched beyond its comfortable span</source>
        <translation>die Hand ist weiter gespreizt, als es bequem ist</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the hand leans a whole fret out of its position</source>
        <translation>die Hand neigt sich einen ganzen Bund aus ihrer Lage</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the hand leans to the next position in a free moment</source>
        <translation>die Hand neigt sich in einem freien Augenblick zur nächsten Lage</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the hand leans to the next position while fingers are busy</source>
        <translation>die Hand neigt sich zur nächsten Lage, während Finger beschäftigt sind</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the hand leaves first position</source>
        <translation>die Hand verlässt die erste Lage</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the hand moves between notes of a tune</source>
        <translation>die Hand bewegt sich zwischen Melodietönen</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/techniques/rules_left.py"/>
        <source>the hand moves on</source>
        <translation>die Hand wandert weiter</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the hand opens less</source>
        <translation>die Hand öffnet sich weniger</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the hand opens wider than one finger a fret</source>
        <translation>die Hand öffnet sich weiter als ein Finger je Bund</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/legato.py"/>
        <source>the hand shifts</source>
        <translation>die Hand wechselt die Lage</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>the hand shifts to fret {fret} and lets the {note} go</source>
        <translation>die Hand wechselt in Bund {fret} und lässt {note} los</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the hand shifts while an open string or a rest gives it time</source>
        <translation>die Hand wechselt die Lage, während eine leere Saite oder Pause Zeit lässt</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the hand shifts while fingers are busy</source>
        <translation>die Hand wechselt die Lage, während Finger beschäftigt sind</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the hand stands in the middle of the neck</source>
        <translation>die Hand steht in der Mitte des Halses</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the hand stays in its position</source>
        <translation>die Hand bleibt in ihrer Lage</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/offered.py"/>
        <source>the handout</source>
        <translation>das Arbeitsblatt</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the higher of two notes lies on the lower-tuned string</source>
        <translation>der höhere zweier Töne liegt auf der tiefer gestimmten Saite</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>the instrument does not have it in any octave that is free</source>
        <translation>das Instrument hat ihn in keiner freien Oktave</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>the instrument does not have it where it was</source>
        <translation>das Instrument hat ihn an seiner Stelle nicht</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>the instrument has it in no octave below the tune</source>
        <translation>das Instrument hat ihn in keiner Oktave unter der Melodie</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/techniques/news.py"/>
        <source>the key of {key}</source>
        <translation>die Tonart {key}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/versions_dialog.py"/>
        <source>the lesson as it is now</source>
        <translation>die Lektion, wie sie jetzt ist</translation>
    </message>
    <message>
        <location filename="../../workbench/sound/hearing.py"/>
        <source>the lower voices</source>
        <translation>die unteren Stimmen</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the melody jumps to a string further away</source>
        <translation>die Melodie springt auf eine entferntere Saite</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the melody stays on neighbouring strings</source>
        <translation>die Melodie bleibt auf benachbarten Saiten</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/offered.py"/>
        <source>the music for other programs</source>
        <translation>die Noten für andere Programme</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/legato.py"/>
        <source>the next grip lies out of reach</source>
        <translation>der nächste Griff liegt außer Reichweite</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>the next note sharp, flat, natural</source>
        <translation>nächster Ton mit Kreuz, B, Auflösungszeichen</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the note lies high on the neck</source>
        <translation>der Ton liegt hoch am Hals</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/page.py"/>
        <source>the opening</source>
        <translation>die Einleitung</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/rejected.py"/>
        <source>the other fingering</source>
        <translation>der andere Fingersatz</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/bars/form_words.py"/>
        <source>the parallel major</source>
        <translation>die gleichnamige Durtonart</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/bars/form_words.py"/>
        <source>the parallel minor</source>
        <translation>die gleichnamige Molltonart</translation>
    </message>
    <message>
        <location filename="../../workbench/music/bar_names.py"/>
        <location filename="../../workbench/ui/views/script/page.py"/>
        <source>the pickup</source>
        <translation>Auftakt</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/scripts/spans.py"/>
        <source>the pickup to bar {last}</source>
        <translation>der Auftakt bis Takt {last}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/exercise_files.py"/>
        <source>the picture could not be saved</source>
        <translation>das Bild ließ sich nicht speichern</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>the pin on {pitch} asks a place or finger that does not sound it</source>
        <translation>die Festlegung auf {pitch} verlangt einen Platz oder Finger, der diesen Ton nicht ergibt</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/offered.py"/>
        <source>the practice plan alone</source>
        <translation>der Übeplan allein</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/attach.py"/>
        <source>the rejected fingering</source>
        <translation>der abgelehnte Fingersatz</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/bars/form_words.py"/>
        <source>the relative major</source>
        <translation>die Durparallele</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/bars/form_words.py"/>
        <source>the relative major of the dominant</source>
        <translation>die Durparallele der Dominante</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/bars/form_words.py"/>
        <source>the relative major of the subdominant</source>
        <translation>die Durparallele der Subdominante</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/bars/form_words.py"/>
        <source>the relative minor</source>
        <translation>die Mollparallele</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/bars/form_words.py"/>
        <source>the relative minor of the dominant</source>
        <translation>die Mollparallele der Dominante</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/bars/form_words.py"/>
        <source>the relative minor of the subdominant</source>
        <translation>die Mollparallele der Subdominante</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the same finger plucks twice running</source>
        <translation>derselbe Finger zupft zweimal hintereinander</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/bars/form_words.py"/>
        <source>the same key</source>
        <translation>dieselbe Tonart</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <location filename="../../workbench/ui/player/spans.py"/>
        <source>the selected bars</source>
        <translation>die gewählten Takte</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>the shapes are those of the guitar's upper strings</source>
        <translation>die Griffe sind die der oberen Gitarrensaiten</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the string crossing is awkward</source>
        <translation>der Saitenwechsel ist unbequem</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the stronger finger could lead</source>
        <translation>der stärkere Finger könnte führen</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the stronger finger leads</source>
        <translation>der stärkere Finger führt</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/grade.py"/>
        <source>the student's grade (default: the piece's)</source>
        <translation>Stufe des Schülers (sonst die des Stücks)</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/bars/form_words.py"/>
        <source>the subdominant</source>
        <translation>die Subdominante</translation>
    </message>
    <message>
        <location filename="../../workbench/sound/hearing.py"/>
        <source>the thumb</source>
        <translation>der Daumen</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the thumb crosses under the fingers</source>
        <translation>der Daumen kreuzt unter den Fingern</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the thumb plays the melody</source>
        <translation>der Daumen spielt die Melodie</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the thumb takes the bass</source>
        <translation>der Daumen nimmt den Bass</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the tip of finger 1 reaches over to a bass string</source>
        <translation>die Kuppe von Finger 1 greift zu einer Basssaite hinüber</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/import_dialog.py"/>
        <source>the tune alone</source>
        <translation>die Melodie allein</translation>
    </message>
    <message>
        <location filename="../../workbench/sound/hearing.py"/>
        <source>the upper voice</source>
        <translation>die Oberstimme</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the weak pair of fingers works less</source>
        <translation>das schwache Fingerpaar arbeitet weniger</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the weakest finger has to lead along its string</source>
        <translation>der schwächste Finger muss auf seiner Saite führen</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <location filename="../../workbench/ui/player/spans.py"/>
        <source>the whole piece</source>
        <translation>das ganze Stück</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>the {note} is struck again on string {string} and goes on there</source>
        <translation>{note} wird auf Saite {string} neu angeschlagen und klingt dort weiter</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>the {nth} {note} on string {string}, fret {fret}</source>
        <translation>das {nth} {note} auf Saite {string}, Bund {fret}</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>there are more notes than strings</source>
        <translation>es sind mehr Töne als Saiten</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>there it can be played with the others, below the tune</source>
        <translation>dort ist er mit den anderen zu spielen, unter der Melodie</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/sounds.py"/>
        <source>third</source>
        <translation>Terz</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/bars/harmony.py"/>
        <source>third inversion</source>
        <translation>dritte Umkehrung</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/techniques/rules_left.py"/>
        <source>thirds</source>
        <translation>Terzen</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>thirds and sixths</source>
        <translation>Terzen und Sexten</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/features.py"/>
        <source>thirty-second notes</source>
        <translation>Zweiunddreißigstel</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <location filename="../../workbench/ui/player/spans.py"/>
        <source>this bar</source>
        <translation>dieser Takt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/commands.py"/>
        <location filename="../../workbench/ui/player/spans.py"/>
        <source>this section</source>
        <translation>dieser Abschnitt</translation>
    </message>
    <message>
        <location filename="../../workbench/language/numbers.py"/>
        <source>three</source>
        <comment>number</comment>
        <translation>drei</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/techniques/news.py"/>
        <source>three fingers together</source>
        <translation>drei Finger zusammen</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>three frets apart or more</source>
        <translation>drei Bünde oder mehr auseinander</translation>
    </message>
    <message>
        <location filename="../../workbench/music/telling/form.py"/>
        <source>three times</source>
        <translation>dreimal</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <source>thumb</source>
        <translation>Daumen</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>thumb alone</source>
        <translation>Daumen allein</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>thumb and fingers do not cross</source>
        <translation>Daumen und Finger kreuzen sich nicht</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>tie the note at hand to the next; with Shift untie it</source>
        <translation>den gewählten Ton mit Haltebogen an den nächsten binden; mit Umschalt lösen</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/features.py"/>
        <source>ties over the bar line</source>
        <translation>Überbindungen über den Taktstrich</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/read.py"/>
        <source>time</source>
        <comment>head</comment>
        <translation>Taktart</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/lessons.py"/>
        <source>title</source>
        <comment>head</comment>
        <translation>Titel</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/bar_rows.py"/>
        <source>to Coda</source>
        <translation>zur Coda</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/techniques/rules_left.py"/>
        <source>to position {position}</source>
        <translation>in die Lage {position}</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/techniques/rules_music.py"/>
        <source>to the Coda</source>
        <translation>zur Coda</translation>
    </message>
    <message>
        <location filename="../../workbench/music/telling/form.py"/>
        <source>to the Fine</source>
        <translation>bis zum Fine</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/techniques/rules_music.py"/>
        <source>to {time}</source>
        <translation>zu {time}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/plan/table.py"/>
        <source>to ♩ = {beats}</source>
        <translation>bis ♩ = {beats}</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <location filename="../../workbench/teaching/grading/features.py"/>
        <source>triplets</source>
        <translation>Triolen</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/sounds.py"/>
        <source>tune</source>
        <translation>Melodie</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/features.py"/>
        <source>tuplets other than triplets</source>
        <translation>andere Teilungen als Triolen</translation>
    </message>
    <message>
        <location filename="../../workbench/music/telling/form.py"/>
        <source>twice</source>
        <translation>zweimal</translation>
    </message>
    <message>
        <location filename="../../workbench/language/numbers.py"/>
        <source>two</source>
        <comment>number</comment>
        <translation>zwei</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/features.py"/>
        <source>two against three</source>
        <translation>zwei gegen drei</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>two fingers are further apart than is comfortable</source>
        <translation>zwei Finger stehen weiter auseinander, als bequem ist</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>two fingers on one fret stand strings apart</source>
        <translation>zwei Finger in einem Bund stehen um Saiten auseinander</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>two fingers or more crowd on one fret</source>
        <translation>zwei oder mehr Finger drängen sich in einem Bund</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>two fingers stand crossed on one fret</source>
        <translation>zwei Finger stehen gekreuzt in einem Bund</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/techniques/news.py"/>
        <source>two fingers together</source>
        <translation>zwei Finger zusammen</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>two frets apart</source>
        <translation>zwei Bünde auseinander</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/history_dialog.py"/>
        <source>undone</source>
        <translation>rückgängig</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/features.py"/>
        <source>uneven time</source>
        <translation>unregelmäßige Taktart</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/keys.py"/>
        <source>unplayable</source>
        <comment>head</comment>
        <translation>unspielbar</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>up an octave</source>
        <translation>eine Oktave aufwärts</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>up {interval}</source>
        <translation>{interval} aufwärts</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>up {word} octaves</source>
        <translation>{word} Oktaven aufwärts</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/lessons.py"/>
        <source>updated</source>
        <comment>head</comment>
        <translation>geändert am</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>uses the open string</source>
        <translation>nutzt die leere Saite</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/bar.py"/>
        <source>voice 1: the score's own ink, stems up, bold figures</source>
        <translation>Stimme 1: Farbe der Noten, Hälse nach oben, fette Ziffern</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/writer.py"/>
        <source>voice {voice} · {place}</source>
        <translation>Stimme {voice} · {place}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/bar.py"/>
        <source>voice {voice}: an ink of its own, stems down, light figures</source>
        <translation>Stimme {voice}: eigene Farbe, Hälse nach unten, magere Ziffern</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/read.py"/>
        <source>voices</source>
        <comment>head</comment>
        <translation>Stimmen</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/plan_grid.py"/>
        <source>warm up</source>
        <translation>Einspielen</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/charts/lesson.py"/>
        <source>warm-up</source>
        <translation>Einspielen</translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>weak fingers stay near</source>
        <translation>schwache Finger bleiben nah</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/fit.py"/>
        <source>what it weighs</source>
        <translation>was es gewichtet</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>where it was no hand reaches it together with the others</source>
        <translation>wo er war, erreicht ihn keine Hand zusammen mit den anderen</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/lengths.py"/>
        <source>whole note</source>
        <translation>Ganze</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/changes.py"/>
        <location filename="../../workbench/sound/tracks.py"/>
        <location filename="../../workbench/teaching/planning/items.py"/>
        <source>whole piece</source>
        <translation>ganzes Stück</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/legato.py"/>
        <source>why</source>
        <comment>head</comment>
        <translation>warum</translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>widest reach</source>
        <translation>weiteste Spannweite</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/fit.py"/>
        <source>with --grades: show what the fit finds and put nothing in force</source>
        <translation>mit --grades: zeigen, was die Anpassung ergibt, und nichts in Kraft setzen</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/fit.py"/>
        <source>with SCORE: learn nothing; write the bars that differ most from the print</source>
        <translation>mit SCORE: nichts lernen; die Takte schreiben, die am meisten vom Druck abweichen</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/fit.py"/>
        <source>with SCORE: small, medium or large</source>
        <translation>mit NOTEN: small, medium oder large</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/fit.py"/>
        <source>with SCORE: the instrument they are fingered for</source>
        <translation>mit NOTEN: das Instrument, für das der Fingersatz ist</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/words.py"/>
        <source>with a grip</source>
        <translation>mit einem Griff</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>with the others it would be hard to play</source>
        <translation>mit den anderen zusammen wäre er schwer zu spielen</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/legato.py"/>
        <source>with the pins</source>
        <translation>mit den Festlegungen</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>with the pins on {pinned} no hand reaches {pitch}; lift a pin</source>
        <translation>mit den Festlegungen auf {pinned} erreicht keine Hand {pitch}; lösen Sie eine Festlegung</translation>
    </message>
    <message>
        <location filename="../../workbench/music/telling/form.py"/>
        <source>with {endings}</source>
        <translation>mit {endings}</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>with {held} held like this no hand reaches {notes}</source>
        <translation>mit {held} in dieser Haltung erreicht keine Hand {notes}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/shelf.py"/>
        <source>without a student's name</source>
        <translation>ohne Schülernamen</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>without {habit}, seldom in your scores</source>
        <translation>ohne {habit}, selten in Ihren Noten</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>write a rest</source>
        <translation>eine Pause schreiben</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>write in the next voice; with Shift give it the note at hand</source>
        <translation>in der nächsten Stimme schreiben; mit Umschalt den gewählten Ton in sie setzen</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/plan.py"/>
        <source>write it as Markdown</source>
        <translation>als Markdown schreiben</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/script.py"/>
        <source>write it: .md the script to read, .srt or .vtt cues with times, .txt the chapters</source>
        <translation>schreiben: .md das Skript zum Lesen, .srt oder .vtt Untertitel mit Zeiten, .txt die Kapitel</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>write the note of that letter nearest to the caret</source>
        <translation>den Ton dieses Buchstabens schreiben, der der Schreibmarke am nächsten liegt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/keys.py"/>
        <source>write the note on the caret's line; with Shift add it to the chord</source>
        <translation>den Ton auf der Linie der Schreibmarke schreiben; mit Umschalt zum Akkord hinzufügen</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/legato.py"/>
        <source>written</source>
        <comment>head</comment>
        <translation>notiert</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/comparing.py"/>
        <source>written length held</source>
        <translation>gehaltener Anteil der Notenlängen</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/fit.py"/>
        <location filename="../../workbench/engraving/charts/grades.py"/>
        <source>your grade</source>
        <translation>Ihre Stufe</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/help/shortcut_list.py"/>
        <source>zoom the score or the fretboard</source>
        <translation>Noten oder Griffbrett vergrößern und verkleinern</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/scripts/spans.py"/>
        <source>{bars} again.</source>
        <translation>{bars} noch einmal.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/scripts/spans.py"/>
        <source>{bars} are as {before}.</source>
        <translation>{bars} sind wie {before}.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/material.py"/>
        <source>{bars} in notes and tablature</source>
        <translation>{bars} in Noten und Tabulatur</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/commands.py"/>
        <source>{bars} went, with the notes in it: {notes}.</source>
        <translation>{bars} gelöscht, dazu die Töne darin: {notes}.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/signs.py"/>
        <source>{bars} would be a later ending without a first one before it; mark the first ending first.</source>
        <translation>{bars} wäre eine spätere Klammer ohne eine erste davor; markieren Sie zuerst die erste Klammer.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/scripts/spans.py"/>
        <source>{bars}: as before.</source>
        <translation>{bars}: wie bisher.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/scripts/spans.py"/>
        <source>{bars}: nothing new.</source>
        <translation>{bars}: nichts Neues.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>{bars}: remark added: “{text}”</source>
        <translation>{bars}: Hinweis hinzugefügt: „{text}“</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>{bars}: remark changed: “{text}”</source>
        <translation>{bars}: Hinweis geändert: „{text}“</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>{bars}: remark deleted: “{text}”</source>
        <translation>{bars}: Hinweis gelöscht: „{text}“</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>{bars}: remark was “{old}”, now “{new}”</source>
        <translation>{bars}: Hinweis war „{old}“, jetzt „{new}“</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/scripts/spans.py"/>
        <source>{bars}: rest.</source>
        <translation>{bars}: Pause.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/view.py"/>
        <source>{bar}
your words</source>
        <translation>{bar}
Ihr Text</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/scripts/spans.py"/>
        <source>{bar} again.</source>
        <translation>{bar} noch einmal.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/scripts/spans.py"/>
        <source>{bar} is as in {before}.</source>
        <translation>{bar}: genauso wie {before}.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/signs.py"/>
        <source>{bar} is in no ending; choose a bar under a bracket.</source>
        <translation>{bar} steht unter keiner Klammer; wählen Sie einen Takt unter einer Klammer.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/page.py"/>
        <source>{bar} of {last}, at {time}</source>
        <translation>{bar} von {last}, bei {time}</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/charts/lesson.py"/>
        <source>{bar} takes longest: {low} to {high} minutes until it is in tempo. The bands lie between quick and slow learners.</source>
        <translation>{bar} dauert am längsten: {low} bis {high} Minuten, bis das Tempo erreicht ist. Die Bänder liegen zwischen schnellen und langsamen Lernenden.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/words.py"/>
        <location filename="../../workbench/ui/views/techniques/view.py"/>
        <source>{bar}, beat {beat}</source>
        <translation>{bar}, Schlag {beat}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/caret.py"/>
        <source>{bar}, beat {beat}, voice {voice}</source>
        <translation>{bar}, Schlag {beat}, Stimme {voice}</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>{bar}, beat {beat}, {pitch}</source>
        <translation>{bar}, Schlag {beat}, {pitch}</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/charts/lesson.py"/>
        <source>{bar}, in the middle</source>
        <translation>{bar}, im Mittelfeld</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/charts/lesson.py"/>
        <source>{bar}, takes longest</source>
        <translation>{bar}, dauert am längsten</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/scripts/words.py"/>
        <source>{bar}.</source>
        <translation>{bar}.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>{bar}: {n} pin changed.</source>
        <translation>{bar}: {n} Festlegung geändert.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>{bar}: {n} pins changed.</source>
        <translation>{bar}: {n} Festlegungen geändert.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/exercises.py"/>
        <source>{beats} quarter notes a minute.</source>
        <translation>{beats} Viertel pro Minute.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/beats.py"/>
        <source>{beat} and</source>
        <translation>{beat} und</translation>
    </message>
    <message>
        <location filename="../../workbench/music/beats.py"/>
        <source>{beat} and a bit</source>
        <translation>{beat} und etwas</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/techniques/news.py"/>
        <location filename="../../workbench/teaching/techniques/rules_music.py"/>
        <source>{before} to {after}</source>
        <translation>{before} nach {after}</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>{b} one string away from string 1</source>
        <translation>{b} eine Saite von der 1. Saite weg</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>{b} one string towards string 1</source>
        <translation>{b} eine Saite zur 1. Saite hin</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>{b} two strings or more away from string 1</source>
        <translation>{b} zwei Saiten oder mehr von der 1. Saite weg</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>{b} two strings or more towards string 1</source>
        <translation>{b} zwei Saiten oder mehr zur 1. Saite hin</translation>
    </message>
    <message>
        <location filename="../../workbench/music/telling/form.py"/>
        <source>{count} passes and their endings</source>
        <translation>{count} Durchgängen und ihren Klammern</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/verdict.py"/>
        <source>{cut} and {effort}</source>
        <translation>{cut} und {effort}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/panel.py"/>
        <source>{cut} cut (now {was})</source>
        <translation>{cut} gekürzt (jetzt {was})</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/charts/lesson.py"/>
        <source>{days}, the last of them day {last}; {minutes} minutes in all.</source>
        <translation>{days}, der letzte davon ist Tag {last}; insgesamt {minutes} Minuten.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/features.py"/>
        <source>{demand}: {amount}</source>
        <translation>{demand}: {amount}</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/features.py"/>
        <source>{demand}: {amount}, as in first lessons</source>
        <translation>{demand}: {amount}, wie im Anfangsunterricht</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/features.py"/>
        <source>{demand}: {amount}, as in grade {grade}</source>
        <translation>{demand}: {amount}, wie in Stufe {grade}</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/batch.py"/>
        <source>{done} of {all} handouts written to {folder}.</source>
        <translation>{done} von {all} Arbeitsblättern nach {folder} geschrieben.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/keeper.py"/>
        <source>{fault} Your change is kept in {path} meanwhile and is tried again.</source>
        <translation>{fault} Ihre Änderung liegt inzwischen in {path}, und es wird weiter versucht.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/edits.py"/>
        <source>{field}: give {least} to {most}.</source>
        <translation>{field}: {least} bis {most} angeben.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/opening.py"/>
        <source>{file} is no lesson store (or is damaged) and was left as it is; put a copy of it back, or name another place in {variable}.</source>
        <translation>{file} ist kein Lektionsspeicher (oder beschädigt) und wurde nicht angetastet; spielen Sie eine Kopie zurück oder nennen Sie in {variable} einen anderen Ort.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/plan.py"/>
        <source>{file}: a plan is written as Markdown; end the name with .md.</source>
        <translation>{file}: Ein Plan wird als Markdown geschrieben; der Name muss auf .md enden.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/plan.py"/>
        <source>{file}: {days}, {time} in all.</source>
        <translation>{file}: {days}, insgesamt {time}.</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>{finger} on the {note}</source>
        <translation>{finger} auf {note}</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>{finger} plucks twice running at the {pitch}</source>
        <translation>{finger} zupft bei {pitch} zweimal hintereinander</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/sound.py"/>
        <source>{first} to {last}</source>
        <translation>{first} bis {last}</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/items.py"/>
        <source>{first} to {second}</source>
        <translation>{first} bis {second}</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/batch.py"/>
        <source>{folder} holds no score file; scores end in {endings}.</source>
        <translation>{folder} enthält keine Notendatei; Notendateien enden auf {endings}.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/batch.py"/>
        <source>{folder} is no folder; name the folder that holds the scores.</source>
        <translation>{folder} ist kein Ordner; geben Sie den Ordner mit den Noten an.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/sound.py"/>
        <source>{folder}: {n} track.</source>
        <translation>{folder}: {n} Spur.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/sound.py"/>
        <source>{folder}: {n} tracks.</source>
        <translation>{folder}: {n} Spuren.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/lessons.py"/>
        <source>{found} The store is {place}.</source>
        <translation>{found} Der Lektionsspeicher ist {place}.</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>{good}, but {bad}</source>
        <translation>{good}, aber {bad}</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/words.py"/>
        <source>{grade}, estimated</source>
        <translation>{grade}, geschätzt</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>{habit}, seldom in your scores</source>
        <translation>{habit}: selten in Ihren Noten</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/setting/remarks.py"/>
        <source>{heading} (continued)</source>
        <translation>{heading} (Fortsetzung)</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/material.py"/>
        <location filename="../../workbench/handout/sheets/grip_sheet.py"/>
        <source>{heading} (left-handed: string 1 on the left)</source>
        <translation>{heading} (Linkshänder: Saite 1 links)</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/compare_dialog.py"/>
        <source>{head}, as music</source>
        <translation>{head}, als Noten</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <source>{held} of {notes} notes are held for their full length; {percent} % of all written length sounds.</source>
        <translation>{held} von {notes} Tönen werden in voller Länge gehalten; {percent} % der notierten Länge klingen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <source>{instrument}, capo at fret {fret}; {key}</source>
        <translation>{instrument}, Kapodaster im {fret}. Bund; {key}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/panel.py"/>
        <source>{instrument}; {key}</source>
        <translation>{instrument}; {key}</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/signs.py"/>
        <source>{jump} leads to a {sign}, and the piece has none; mark its bar first.</source>
        <translation>{jump} führt zum Zeichen {sign}, und das Stück hat keines; markieren Sie zuerst den Takt dafür.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/reading_keys.py"/>
        <source>{key} cannot turn both ways; clear one of them.</source>
        <translation>{key} kann nicht in beide Richtungen blättern; leeren Sie eine davon.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/bars/form_words.py"/>
        <source>{key}, {relation} of {home}</source>
        <translation>{key}, {relation} von {home}</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/read.py"/>
        <source>{key}, {tempo:g} crotchets a minute, {bars} bars written, {order} played, {notes} notes</source>
        <translation>{key}, {tempo:g} Viertel je Minute, {bars} Takte notiert, {order} gespielt, {notes} Töne</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/choosing.py"/>
        <source>{last} tunes</source>
        <translation>{last} Stücke</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/caret.py"/>
        <source>{length}, {sign}</source>
        <translation>{length}, {sign}</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/form_map.py"/>
        <source>{letter} bars {bars}</source>
        <translation>{letter} Takt {bars}</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/fit_report.py"/>
        <source>{met} of {printed} printed fingers met.</source>
        <translation>{met} von {printed} gedruckten Fingern getroffen.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/cautions.py"/>
        <source>{minutes} minutes in a day: split them, with a break of five minutes after every twenty-five.</source>
        <translation>{minutes} Minuten am Tag: aufteilen, mit fünf Minuten Pause nach je fünfundzwanzig.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/finger.py"/>
        <source>{more:.1f} above its least, for bars alike and for the right hand</source>
        <translation>{more:.1f} über ihrem Mindesten, für gleiche Takte und für die rechte Hand</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/panel.py"/>
        <source>{moved} of {notes} notes differ</source>
        <translation>{moved} von {notes} Tönen anders</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/next.py"/>
        <source>{moves} and {n} more</source>
        <translation>{moves} und {n} weitere</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/shelf.py"/>
        <source>{move}, from {bar}</source>
        <translation>{move}, ab {bar}</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/techniques/news.py"/>
        <source>{move}: known from '{title}'</source>
        <translation>{move}: bekannt aus „{title}“</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/techniques/news.py"/>
        <source>{move}: new</source>
        <translation>{move}: neu</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/source.py"/>
        <source>{named} is neither a score file nor the id of a lesson; 'lessons' lists the ids.</source>
        <translation>{named} ist weder eine Notendatei noch die Kennung einer Lektion; „lessons“ nennt die Kennungen.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/scripts/words.py"/>
        <location filename="../../workbench/teaching/techniques/news.py"/>
        <source>{names} and {n} more</source>
        <translation>{names} und {n} weitere</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/loading.py"/>
        <location filename="../../workbench/store/archive.py"/>
        <source>{name} cannot be read: {reason}.</source>
        <translation>{name} kann nicht gelesen werden: {reason}.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/score.py"/>
        <source>{name} cannot be understood as {format}{reason}; export the score again.</source>
        <translation>{name} lässt sich nicht als {format} verstehen{reason}; exportieren Sie die Noten neu.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/parsing/midifile.py"/>
        <source>{name} counts in film frames (SMPTE), not in beats; export it in beats.</source>
        <translation>{name} zählt in Filmbildern (SMPTE), nicht in Schlägen; exportieren Sie die Datei in Schlägen.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/loading.py"/>
        <source>{name} declares XML entities, which a score does not need and which can do harm; it is not opened. Export the score again.</source>
        <translation>{name} deklariert XML-Entitäten, die Noten nicht brauchen und die Schaden anrichten können; die Datei wird nicht geöffnet. Exportieren Sie die Noten neu.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/loading.py"/>
        <source>{name} has a text encoding that is not known; save it as UTF-8.</source>
        <translation>{name} hat eine unbekannte Textkodierung; speichern Sie die Datei als UTF-8.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/parsing/midifile.py"/>
        <source>{name} has no length for the quarter note; export it again.</source>
        <translation>{name} nennt keine Länge für die Viertelnote; exportieren Sie die Datei neu.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/building.py"/>
        <source>{name} has no notes in it; choose a score with notes.</source>
        <translation>{name} enthält keine Töne; wählen Sie Noten mit Tönen.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/choosing.py"/>
        <source>{name} has no notes; choose a score with notes in it.</source>
        <translation>{name} enthält keine Töne; wählen Sie Noten, in denen welche stehen.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/parsing/midifile.py"/>
        <source>{name} has no tracks; choose a MIDI file with notes.</source>
        <translation>{name} hat keine Spuren; wählen Sie eine MIDI-Datei mit Tönen.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/choosing.py"/>
        <source>{name} has {n} part: there is no part {number}.</source>
        <translation>{name} hat {n} Part: Einen Part {number} gibt es nicht.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/choosing.py"/>
        <source>{name} has {n} parts: there is no part {number}.</source>
        <translation>{name} hat {n} Parts: Einen Part {number} gibt es nicht.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/building.py"/>
        <source>{name} holds only percussion; a fretted instrument needs notes with pitch.</source>
        <translation>{name} enthält nur Schlagzeug; ein Bundinstrument braucht Töne mit Tonhöhe.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/choosing.py"/>
        <source>{name} holds {holds}: there is no tune {tune}; choose {choice}.</source>
        <translation>{name} enthält {holds}: Ein Stück {tune} gibt es nicht; wählen Sie {choice}.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/loading.py"/>
        <source>{name} is XML but no score (it begins with '{tag}'); give {formats}.</source>
        <translation>{name} ist XML, aber keine Notendatei (der Anfang ist „{tag}“); geben Sie {formats} an.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/loading.py"/>
        <source>{name} is a folder; give a score file: {formats}.</source>
        <translation>{name} ist ein Ordner; geben Sie eine Notendatei an: {formats}.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/archive.py"/>
        <source>{name} is a folder; name an archive.</source>
        <translation>{name} ist ein Ordner; nennen Sie ein Archiv.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/one_page.py"/>
        <source>{name} is a link that leads nowhere; mend or delete it.</source>
        <translation>{name} ist ein Verweis ins Leere; berichtigen oder löschen Sie ihn.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/loading.py"/>
        <source>{name} is a web page, not a score; use the download link of the page itself.</source>
        <translation>{name} ist eine Webseite, keine Notendatei; verwenden Sie den Download-Link auf der Seite selbst.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/loading.py"/>
        <source>{name} is an archive without a score in it; give {formats}.</source>
        <translation>{name} ist ein Archiv ohne Noten darin; geben Sie {formats} an.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/parsing/midifile.py"/>
        <source>{name} is cut off in track {tracks}; download it again.</source>
        <translation>{name} bricht in Spur {tracks} ab; laden Sie die Datei noch einmal herunter.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/parsing/midifile.py"/>
        <source>{name} is cut off: the MIDI header is not whole; export it again.</source>
        <translation>{name} ist abgeschnitten: Der MIDI-Kopf ist nicht vollständig; exportieren Sie die Datei neu.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/parsing/midifile.py"/>
        <source>{name} is damaged in track {tracks}; export it again.</source>
        <translation>{name} ist in Spur {tracks} beschädigt; exportieren Sie die Datei neu.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/loading.py"/>
        <source>{name} is damaged or cut off: the packed MusicXML cannot be unpacked; download or export it again.</source>
        <translation>{name} ist beschädigt oder abgeschnitten: Das gepackte MusicXML lässt sich nicht entpacken; laden Sie die Datei noch einmal herunter oder exportieren Sie sie neu.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/loading.py"/>
        <source>{name} is damaged: it cannot be unpacked; download or export it again.</source>
        <translation>{name} ist beschädigt: Die Datei lässt sich nicht entpacken; laden Sie sie noch einmal herunter oder exportieren Sie sie neu.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/loading.py"/>
        <source>{name} is damaged: it cannot be unpacked; export it again.</source>
        <translation>{name} ist beschädigt: Die Datei lässt sich nicht entpacken; exportieren Sie sie neu.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/loading.py"/>
        <source>{name} is damaged: the XML breaks off or is wrong in line {line}; export the score again.</source>
        <translation>{name} ist beschädigt: Das XML bricht in Zeile {line} ab oder ist dort falsch; exportieren Sie die Noten neu.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/loading.py"/>
        <source>{name} is empty; save or download the score again.</source>
        <translation>{name} ist leer; speichern Sie die Noten neu oder laden Sie sie noch einmal herunter.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/loading.py"/>
        <source>{name} is larger than {most} MB; that is no score, or it has to be split into its movements.</source>
        <translation>{name} ist größer als {most} MB; das ist keine Notendatei, oder sie muss in ihre Sätze geteilt werden.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/score.py"/>
        <source>{name} is nested too deeply to be a score.</source>
        <translation>{name} ist zu tief verschachtelt für eine Notendatei.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/loading.py"/>
        <source>{name} is nested too deeply to be a score; export it again.</source>
        <translation>{name} ist zu tief verschachtelt für Noten; exportieren Sie die Datei noch einmal.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/loading.py"/>
        <source>{name} is no MIDI file: its header is missing; export it again.</source>
        <translation>{name} ist keine MIDI-Datei: Der Kopf fehlt; exportieren Sie die Datei neu.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/archive.py"/>
        <source>{name} is no archive of lessons, or is damaged; get it again from where it was made.</source>
        <translation>{name} ist kein Archiv von Lektionen oder ist beschädigt; holen Sie es noch einmal von dort, wo es gemacht wurde.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/loading.py"/>
        <source>{name} is no ordinary file; give a score file: {formats}.</source>
        <translation>{name} ist keine gewöhnliche Datei; geben Sie eine Notendatei an: {formats}.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/loading.py"/>
        <source>{name} is no packed MusicXML file (.mxl); export the score again.</source>
        <translation>{name} ist keine gepackte MusicXML-Datei (.mxl); exportieren Sie die Noten neu.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/loading.py"/>
        <source>{name} is no score that can be read; give {formats}.</source>
        <translation>{name} enthält keine lesbaren Noten; geben Sie {formats} an.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/kit/file_rows.py"/>
        <source>{name} is there already.</source>
        <translation>{name} ist schon da.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/score.py"/>
        <source>{name} is too large to be read.</source>
        <translation>{name} ist zu groß, um gelesen zu werden.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/parsing/midifile.py"/>
        <source>{name} lasts more than {most} quarter notes; its times are damaged.</source>
        <translation>{name} dauert mehr als {most} Viertel; die Zeitangaben sind beschädigt.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/loading.py"/>
        <source>{name} may not be read; ask for the right to read it.</source>
        <translation>{name} darf nicht gelesen werden; lassen Sie sich das Leserecht geben.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/apart.py"/>
        <source>{name} needs more than {most} MB of memory to read and was given up; it is damaged, or it has to be split into its movements.</source>
        <translation>{name} braucht zum Lesen mehr als {most} MB Speicher und wurde aufgegeben; die Datei ist beschädigt, oder sie muss in ihre Sätze geteilt werden.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/apart.py"/>
        <source>{name} takes too long to read and was given up; it is damaged, or it has to be split into its movements.</source>
        <translation>{name} zu lesen dauert zu lange und wurde aufgegeben; die Datei ist beschädigt, oder sie muss in ihre Sätze geteilt werden.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/loading.py"/>
        <source>{name} unpacks to far more than a score needs; it is not opened.</source>
        <translation>{name} wird entpackt weit größer, als Noten es je brauchen; die Datei wird nicht geöffnet.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/archive.py"/>
        <source>{name} unpacks to more than lessons need; it is not opened.</source>
        <translation>{name} enthält ausgepackt mehr, als Lektionen brauchen; es wird nicht geöffnet.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/loading.py"/>
        <source>{name} unpacks to {size} MB, far more than a score needs; it is not opened. Export the score again.</source>
        <translation>{name} wird entpackt {size} MB groß, weit mehr, als Noten brauchen; die Datei wird nicht geöffnet. Exportieren Sie die Noten neu.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/archive.py"/>
        <source>{name} was written by a newer version of the program; update this one.</source>
        <translation>{name} wurde von einer neueren Version des Programms geschrieben; aktualisieren Sie dieses.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/building.py"/>
        <source>{name}, bar {bar}</source>
        <translation>{name}, Takt {bar}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/tips.py"/>
        <source>{name}, voice {voice}</source>
        <translation>{name}, Stimme {voice}</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/choosing.py"/>
        <source>{name}: the chosen part has no notes; choose another.</source>
        <translation>{name}: Der gewählte Part enthält keine Töne; wählen Sie einen anderen.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/parsing/meters.py"/>
        <source>{name}: the time signature '{said}' cannot be read; mend it (at most {most} beats in a bar) and try again.</source>
        <translation>{name}: Die Taktart „{said}“ ist nicht lesbar; berichtigen Sie sie (höchstens {most} Schläge im Takt) und versuchen Sie es noch einmal.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/score.py"/>
        <source>{name}: tune {tune} has no notes; choose another.</source>
        <translation>{name}: Stück {tune} hat keine Töne; wählen Sie ein anderes.</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/charts/grades.py"/>
        <source>{name}: {before} before, {after} after, your grade {wanted}.</source>
        <translation>{name}: vorher {before}, nachher {after}, Ihre Stufe {wanted}.</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/charts/grades.py"/>
        <source>{name}: {before} before, {after} now.</source>
        <translation>{name}: vorher {before}, jetzt {after}.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>{name}: {old}, now {new}.</source>
        <translation>{name}: {old}, jetzt {new}.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/player/tuner.py"/>
        <source>{name}; the tone is repeated until another or Silence. The usual A4 is 440 Hz.</source>
        <translation>{name}; der Ton wird wiederholt, bis ein anderer oder Stille gewählt wird. Das übliche A4 hat 440 Hz.</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>{notes} notes at once, but only {strings} strings</source>
        <translation>{notes} Töne zugleich, aber nur {strings} Saiten</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/finger.py"/>
        <source>{notes} notes, {cut} cut short, {share:.1%} of the written length held; left hand's effort {cost:.1f} ({proved})</source>
        <translation>{notes} Töne, {cut} gekürzt, {share:.1%} der notierten Länge gehalten; Aufwand der linken Hand {cost:.1f} ({proved})</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/teacher.py"/>
        <source>{notes} notes. {cut} {held} of the written length is held.</source>
        <translation>{notes} Töne. {cut} {held} der notierten Länge werden gehalten.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/grips.py"/>
        <source>{notes}, {number}</source>
        <translation>{notes}, {number}</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/comparing.py"/>
        <source>{note} at beat {beat}</source>
        <translation>{note} auf Schlag {beat}</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>{note} on string {string}, fret {fret}</source>
        <translation>{note} auf Saite {string}, Bund {fret}</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/teacher.py"/>
        <source>{note} on string {string}, fret {fret}, finger {finger}</source>
        <translation>{note} auf Saite {string}, Bund {fret}, Finger {finger}</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>{number} octaves</source>
        <translation>{number} Oktaven</translation>
    </message>
    <message>
        <location filename="../../workbench/sound/tracks.py"/>
        <source>{number} {where} at {tempo} percent</source>
        <translation>{number} {where} mit {tempo} Prozent</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <location filename="../../workbench/ui/lesson/import_dialog.py"/>
        <source>{n} bar</source>
        <translation>{n} Takt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/panel.py"/>
        <source>{n} bar like it</source>
        <translation>{n} gleichem Takt</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/script.py"/>
        <location filename="../../workbench/ui/views/script/view.py"/>
        <source>{n} bar, about {time}</source>
        <translation>{n} Takt, etwa {time}</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <location filename="../../workbench/ui/lesson/import_dialog.py"/>
        <source>{n} bars</source>
        <translation>{n} Takte</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/panel.py"/>
        <source>{n} bars like it</source>
        <translation>{n} gleichen Takten</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/script.py"/>
        <location filename="../../workbench/ui/views/script/view.py"/>
        <source>{n} bars, about {time}</source>
        <translation>{n} Takte, etwa {time}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/playing_fields.py"/>
        <source>{n} changed</source>
        <translation>{n} geändert</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/bar_rows.py"/>
        <source>{n} cut</source>
        <translation>{n} gekürzt</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/teacher.py"/>
        <source>{n} cut short.</source>
        <translation>{n} gekürzt.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/files.py"/>
        <source>{n} day</source>
        <translation>{n} Tag</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/charts/lesson.py"/>
        <source>{n} day with practice</source>
        <translation>{n} Übetag</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/files.py"/>
        <source>{n} days</source>
        <translation>{n} Tage</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/plan.py"/>
        <source>{n} days a week: plan between 1 and 7.</source>
        <translation>{n} Tage pro Woche: Planen Sie zwischen 1 und 7.</translation>
    </message>
    <message>
        <location filename="../../workbench/engraving/charts/lesson.py"/>
        <source>{n} days with practice</source>
        <translation>{n} Übetage</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/shelf.py"/>
        <source>{n} earlier lesson {whose}</source>
        <translation>{n} früheren Lektion {whose}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/shelf.py"/>
        <source>{n} earlier lessons {whose}</source>
        <translation>{n} früheren Lektionen {whose}</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>{n} end early</source>
        <translation>{n} enden früher</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>{n} ends early</source>
        <translation>{n} endet früher</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/verdict.py"/>
        <source>{n} fewer cut note</source>
        <translation>{n} gekürzter Ton weniger</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/verdict.py"/>
        <source>{n} fewer cut notes</source>
        <translation>{n} gekürzte Töne weniger</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <location filename="../../workbench/teaching/bars/form_words.py"/>
        <source>{n} flat</source>
        <translation>{n} Be</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <location filename="../../workbench/teaching/bars/form_words.py"/>
        <source>{n} flats</source>
        <translation>{n} Be</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/calibrate.py"/>
        <source>{n} graded pieces are too few to learn from; grade at least {fewest}, of two or more different grades.</source>
        <translation>{n} eingestufte Stücke sind zu wenige, um daraus zu lernen; stufen Sie mindestens {fewest} ein, in zwei oder mehr verschiedene Stufen.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/words.py"/>
        <source>{n} h</source>
        <translation>{n} h</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/easier.py"/>
        <source>{n} in another octave</source>
        <translation>{n} in anderer Oktave</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/playing_fields.py"/>
        <source>{n} left out</source>
        <translation>{n} weggelassen</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/book.py"/>
        <location filename="../../workbench/ui/keeping/backups_dialog.py"/>
        <location filename="../../workbench/ui/lesson/import_dialog.py"/>
        <location filename="../../workbench/ui/shelf/lessons.py"/>
        <source>{n} lesson</source>
        <translation>{n} Lektion</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/safe_keeping.py"/>
        <source>{n} lesson in the bin will be gone for good, with its history. This cannot be undone.</source>
        <translation>{n} Lektion im Papierkorb ist dann mit ihrem Verlauf endgültig fort. Das lässt sich nicht rückgängig machen.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/lessons.py"/>
        <location filename="../../workbench/ui/window/safe_keeping.py"/>
        <source>{n} lesson is gone for good.</source>
        <translation>{n} Lektion ist endgültig fort.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/lessons.py"/>
        <source>{n} lesson is in the archive.</source>
        <translation>{n} Lektion ist im Archiv.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/archive.py"/>
        <location filename="../../workbench/ui/window/safe_keeping.py"/>
        <source>{n} lesson is in {path}.</source>
        <translation>{n} Lektion ist in {path}.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/told.py"/>
        <source>{n} lesson is new: {titles}.</source>
        <translation>{n} Lektion ist neu: {titles}.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/told.py"/>
        <source>{n} lesson is newer here and stays; the archive's state is kept as a version: {titles}.</source>
        <translation>{n} Lektion ist hier neuer und bleibt; der Stand des Archivs wird als Version behalten: {titles}.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/next.py"/>
        <source>{n} lesson is not fingered yet and not compared.</source>
        <translation>{n} Lektion hat noch keinen Fingersatz und ist nicht verglichen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/shelf.py"/>
        <source>{n} lesson is not fingered yet and not counted.</source>
        <translation>{n} Lektion hat noch keinen Fingersatz und zählt nicht mit.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/lessons.py"/>
        <source>{n} lesson is on the shelf again.</source>
        <translation>{n} Lektion ist wieder im Regal.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/told.py"/>
        <source>{n} lesson was brought up to date, and what was here is kept as a version: {titles}.</source>
        <translation>{n} Lektion wurde auf den neuen Stand gebracht, und was hier war, wird als Version behalten: {titles}.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/told.py"/>
        <source>{n} lesson was the same.</source>
        <translation>{n} Lektion war gleich.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/book.py"/>
        <location filename="../../workbench/ui/keeping/backups_dialog.py"/>
        <location filename="../../workbench/ui/lesson/import_dialog.py"/>
        <location filename="../../workbench/ui/shelf/lessons.py"/>
        <source>{n} lessons</source>
        <translation>{n} Lektionen</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/lessons.py"/>
        <location filename="../../workbench/ui/window/safe_keeping.py"/>
        <source>{n} lessons are gone for good.</source>
        <translation>{n} Lektionen sind endgültig fort.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/lessons.py"/>
        <source>{n} lessons are in the archive.</source>
        <translation>{n} Lektionen sind im Archiv.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/lessons.py"/>
        <source>{n} lessons are in the bin; they can be restored from there.</source>
        <translation>{n} Lektionen sind im Papierkorb und lassen sich von dort wiederherstellen.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/archive.py"/>
        <location filename="../../workbench/ui/window/safe_keeping.py"/>
        <source>{n} lessons are in {path}.</source>
        <translation>{n} Lektionen sind in {path}.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/told.py"/>
        <source>{n} lessons are new: {titles}.</source>
        <translation>{n} Lektionen sind neu: {titles}.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/told.py"/>
        <source>{n} lessons are newer here and stay; the archive's states are kept as versions: {titles}.</source>
        <translation>{n} Lektionen sind hier neuer und bleiben; die Stände des Archivs werden als Versionen behalten: {titles}.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/next.py"/>
        <source>{n} lessons are not fingered yet and not compared.</source>
        <translation>{n} Lektionen haben noch keinen Fingersatz und sind nicht verglichen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/shelf.py"/>
        <source>{n} lessons are not fingered yet and not counted.</source>
        <translation>{n} Lektionen haben noch keinen Fingersatz und zählen nicht mit.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/lessons.py"/>
        <source>{n} lessons are on the shelf again.</source>
        <translation>{n} Lektionen sind wieder im Regal.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/window/safe_keeping.py"/>
        <source>{n} lessons in the bin will be gone for good, with their histories. This cannot be undone.</source>
        <translation>{n} Lektionen im Papierkorb sind dann mit ihren Verläufen endgültig fort. Das lässt sich nicht rückgängig machen.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/told.py"/>
        <source>{n} lessons were brought up to date, and what was here is kept as versions: {titles}.</source>
        <translation>{n} Lektionen wurden auf den neuen Stand gebracht, und was hier war, wird als Versionen behalten: {titles}.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/told.py"/>
        <source>{n} lessons were the same.</source>
        <translation>{n} Lektionen waren gleich.</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>{n} lie in another octave</source>
        <translation>{n} liegen in einer anderen Oktave</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>{n} lies in another octave</source>
        <translation>{n} liegt in einer anderen Oktave</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/words.py"/>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>{n} min</source>
        <translation>{n} min</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/plan.py"/>
        <source>{n} minutes a day: plan between 5 and 240.</source>
        <translation>{n} Minuten pro Tag: Planen Sie zwischen 5 und 240.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/verdict.py"/>
        <source>{n} more cut note</source>
        <translation>{n} gekürzter Ton mehr</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/verdict.py"/>
        <source>{n} more cut notes</source>
        <translation>{n} gekürzte Töne mehr</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/import_dialog.py"/>
        <location filename="../../workbench/ui/views/arranging/easier_dialog.py"/>
        <source>{n} note</source>
        <translation>{n} Ton</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/view.py"/>
        <source>{n} note</source>
        <comment>music</comment>
        <translation>{n} Ton</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/easier.py"/>
        <source>{n} note fewer</source>
        <translation>{n} Note weniger</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>{n} note is left out</source>
        <translation>{n} Ton wird weggelassen</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>{n} note lies in another octave or ends early</source>
        <translation>{n} Ton liegt in einer anderen Oktave oder endet früher</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/easier.py"/>
        <source>{n} note more</source>
        <translation>{n} Note mehr</translation>
    </message>
    <message>
        <location filename="../../workbench/music/telling/warnings.py"/>
        <source>{n} note of no or negative length was left out (bars {bars}{more}); check the score.</source>
        <translation>{n} Note ohne oder mit negativer Länge wurde weggelassen (Takte {bars}{more}); prüfen Sie die Noten.</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>{n} note of the tune had to change</source>
        <translation>{n} Ton der Melodie musste sich ändern</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>{n} note of the tune has to change</source>
        <translation>{n} Ton der Melodie muss sich ändern</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/import_dialog.py"/>
        <location filename="../../workbench/ui/views/arranging/easier_dialog.py"/>
        <source>{n} notes</source>
        <translation>{n} Töne</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/view.py"/>
        <source>{n} notes</source>
        <comment>music</comment>
        <translation>{n} Töne</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>{n} notes are left out</source>
        <translation>{n} Töne werden weggelassen</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/easier.py"/>
        <source>{n} notes fewer</source>
        <translation>{n} Noten weniger</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>{n} notes lie in another octave or end early</source>
        <translation>{n} Töne liegen in einer anderen Oktave oder enden früher</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/easier.py"/>
        <source>{n} notes more</source>
        <translation>{n} Noten mehr</translation>
    </message>
    <message>
        <location filename="../../workbench/music/telling/warnings.py"/>
        <source>{n} notes of no or negative length were left out (bars {bars}{more}); check the score.</source>
        <translation>{n} Noten ohne oder mit negativer Länge wurden weggelassen (Takte {bars}{more}); prüfen Sie die Noten.</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>{n} notes of the tune had to change</source>
        <translation>{n} Töne der Melodie mussten sich ändern</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>{n} notes of the tune have to change</source>
        <translation>{n} Töne der Melodie müssen sich ändern</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/features.py"/>
        <source>{n} or more</source>
        <translation>{n} oder mehr</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/fit.py"/>
        <source>{n} others moved by less than 0.05.</source>
        <translation>{n} weitere haben sich um weniger als 0,05 verändert.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/printing.py"/>
        <source>{n} page is on its way to the printer.</source>
        <translation>{n} Seite ist unterwegs zum Drucker.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/printing.py"/>
        <source>{n} pages are on their way to the printer.</source>
        <translation>{n} Seiten sind unterwegs zum Drucker.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/booklet.py"/>
        <source>{n} pages stay blank.</source>
        <translation>{n} Seiten bleiben leer.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/pieces.py"/>
        <source>{n} piece</source>
        <translation>{n} Stück</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/pieces.py"/>
        <source>{n} piece is off the shelf; its lessons stay.</source>
        <translation>{n} Stück ist aus dem Regal genommen; seine Lektionen bleiben.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/pieces.py"/>
        <source>{n} pieces</source>
        <translation>{n} Stücke</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/pieces.py"/>
        <source>{n} pieces are off the shelf; their lessons stay.</source>
        <translation>{n} Stücke sind aus dem Regal genommen; ihre Lektionen bleiben.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/bar_rows.py"/>
        <source>{n} pin</source>
        <translation>{n} Festlegung</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/music_changed.py"/>
        <source>{n} pin was let go: its note has another pitch.</source>
        <translation>{n} Festlegung wurde aufgehoben: Ihr Ton hat eine andere Höhe.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <location filename="../../workbench/teaching/lessons/music_changed.py"/>
        <source>{n} pin went with its note.</source>
        <translation>{n} Festlegung ist mit ihrem Ton weggefallen.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/bar_rows.py"/>
        <source>{n} pins</source>
        <translation>{n} Festlegungen</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <location filename="../../workbench/teaching/lessons/music_changed.py"/>
        <source>{n} pins went with their notes.</source>
        <translation>{n} Festlegungen sind mit ihren Tönen weggefallen.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/music_changed.py"/>
        <source>{n} pins were let go: their notes have another pitch.</source>
        <translation>{n} Festlegungen wurden aufgehoben: Ihre Töne haben eine andere Höhe.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/scores_dialog.py"/>
        <source>{n} printed finger or string</source>
        <translation>{n} gedruckter Finger oder eine Saite</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/grading/scores_dialog.py"/>
        <source>{n} printed fingers and strings</source>
        <translation>{n} gedruckte Finger und Saiten</translation>
    </message>
    <message>
        <location filename="../../workbench/store/learning.py"/>
        <source>{n} printed mark that no hand can hold was left out.</source>
        <translation>{n} gedruckte Angabe, die keine Hand greifen kann, blieb weg.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/learning.py"/>
        <source>{n} printed marks that no hand can hold were left out.</source>
        <translation>{n} gedruckte Angaben, die keine Hand halten kann, blieben außer Betracht.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/telling/warnings.py"/>
        <source>{n} quarter tone (bar {bars}): frets give half tones, so it is read as the nearest one.</source>
        <translation>{n} Viertelton (Takt {bars}): Bünde geben Halbtöne, er wird als der nächste gelesen.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/telling/warnings.py"/>
        <source>{n} quarter tones (bars {bars}): frets give half tones, so they are read as the nearest ones.</source>
        <translation>{n} Vierteltöne (Takte {bars}): Bünde geben Halbtöne, sie werden als die nächsten gelesen.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/bar_rows.py"/>
        <source>{n} remark</source>
        <translation>{n} Hinweis</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/bar_rows.py"/>
        <source>{n} remarks</source>
        <translation>{n} Hinweise</translation>
    </message>
    <message>
        <location filename="../../workbench/store/learning.py"/>
        <source>{n} score was read; it prints {marks} left fingers and strings.</source>
        <translation>{n} Datei wurde gelesen; darin stehen {marks} Finger der linken Hand und Saiten.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/learning.py"/>
        <source>{n} scores were read; they print {marks} left fingers and strings.</source>
        <translation>{n} Dateien wurden gelesen; darin stehen {marks} Finger der linken Hand und Saiten.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/shelf/lessons.py"/>
        <source>{n} selected</source>
        <translation>{n} gewählt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/score/menu.py"/>
        <source>{n} selected notes</source>
        <translation>{n} gewählte Töne</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/playing_fields.py"/>
        <source>{n} semitone higher</source>
        <translation>{n} Halbton höher</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/playing_fields.py"/>
        <source>{n} semitone lower</source>
        <translation>{n} Halbton tiefer</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/playing_fields.py"/>
        <source>{n} semitones higher</source>
        <translation>{n} Halbtöne höher</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/lesson/playing_fields.py"/>
        <source>{n} semitones lower</source>
        <translation>{n} Halbtöne tiefer</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <location filename="../../workbench/teaching/bars/form_words.py"/>
        <source>{n} sharp</source>
        <translation>{n} Kreuz</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/features.py"/>
        <source>{n} sharp or flat</source>
        <translation>{n} Vorzeichen</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <location filename="../../workbench/teaching/bars/form_words.py"/>
        <source>{n} sharps</source>
        <translation>{n} Kreuze</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/features.py"/>
        <source>{n} sharps or flats</source>
        <translation>{n} Vorzeichen</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/booklet.py"/>
        <source>{n} sheets, laid in one another.</source>
        <translation>{n} Bögen, ineinandergelegt.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/music_changed.py"/>
        <source>{n} tick of the practice plan went with its bars.</source>
        <translation>{n} Häkchen im Übeplan entfiel mit seinen Takten.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/music_changed.py"/>
        <source>{n} ticks of the practice plan went with their bars.</source>
        <translation>{n} Häkchen im Übeplan entfielen mit ihren Takten.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/telling/form.py"/>
        <source>{n} times</source>
        <translation>{n}-mal</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>{octaves} and {interval}</source>
        <translation>{octaves} und {interval}</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/handout.py"/>
        <source>{page}: {n} page.</source>
        <translation>{page}: {n} Seite.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/handout.py"/>
        <source>{page}: {n} pages.</source>
        <translation>{page}: {n} Seiten.</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>{part} of a quarter</source>
        <translation>{part} einer Viertel</translation>
    </message>
    <message>
        <location filename="../../workbench/music/files.py"/>
        <source>{path} cannot be written ({why}); choose another place.</source>
        <translation>{path} kann nicht geschrieben werden ({why}); wählen Sie einen anderen Ort.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/files.py"/>
        <source>{path} cannot be written: the folder {folder} does not exist; make it or choose another.</source>
        <translation>{path} kann nicht geschrieben werden: Den Ordner {folder} gibt es nicht; legen Sie ihn an oder wählen Sie einen anderen.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/reading/loading.py"/>
        <location filename="../../workbench/store/archive.py"/>
        <source>{path} does not exist; check the name and the folder.</source>
        <translation>{path} gibt es nicht; prüfen Sie Namen und Ordner.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/pack.py"/>
        <source>{path} is a file; name a folder for the pack, or a .zip file.</source>
        <translation>{path} ist eine Datei; bitte einen Ordner für das Paket nennen oder eine .zip-Datei.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/sound.py"/>
        <source>{path} is a file; name a folder for the tracks.</source>
        <translation>{path} ist eine Datei; bitte einen Ordner für die Spuren nennen.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/pack.py"/>
        <source>{path} is a folder with other things in it; name a new folder or a .zip file.</source>
        <translation>{path} ist ein Ordner mit anderen Dingen; bitte einen neuen Ordner oder eine .zip-Datei nennen.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/files.py"/>
        <source>{path} is a folder; name the file to write in it.</source>
        <translation>{path} ist ein Ordner; nennen Sie die Datei, die darin geschrieben werden soll.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/output.py"/>
        <source>{path} is a folder; name the file to write, such as {name}.</source>
        <translation>{path} ist ein Ordner; nennen Sie die Datei, die geschrieben werden soll, etwa {name}.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/arrange.py"/>
        <source>{path} is written.</source>
        <translation>{path} ist geschrieben.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/files/passage.py"/>
        <source>{path}: a picture is written as .svg or .png; end the name with one of them.</source>
        <translation>{path}: Ein Bild wird als .svg oder .png geschrieben; der Name muss auf eines von beiden enden.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/files/text_file.py"/>
        <source>{path}: a script is not written as '{suffix}'; end the name with one of {known}.</source>
        <translation>{path}: Ein Skript wird nicht als „{suffix}“ geschrieben; der Name muss auf eines von {known} enden.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/writing/score.py"/>
        <source>{path}: end the name with .musicxml, .mxl (packed) or .mid.</source>
        <translation>{path}: Der Name muss auf .musicxml, .mxl (gepackt) oder .mid enden.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/sound.py"/>
        <location filename="../../workbench/sound/files.py"/>
        <source>{path}: sound is written as .wav or .flac; end the name with one of them.</source>
        <translation>{path}: Klang wird als .wav oder .flac geschrieben; bitte den Namen so enden lassen.</translation>
    </message>
    <message>
        <location filename="../../workbench/sound/files.py"/>
        <source>{path}: that is more sound than a WAVE file holds; choose fewer bars.</source>
        <translation>{path}: Das ist mehr Klang, als eine WAVE-Datei fasst; wählen Sie weniger Takte.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/files/text_file.py"/>
        <source>{path}: the name says no form; end it with one of {known}.</source>
        <translation>{path}: Der Name nennt kein Format; er muss auf eines von {known} enden.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/paper/exercise_files.py"/>
        <source>{path}: write an exercise as .pdf or .png; end the name with one of them.</source>
        <translation>{path}: Speichern Sie eine Übung als .pdf oder .png; der Name muss auf eines davon enden.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/fit.py"/>
        <source>{path}: {n} bars, worst first.</source>
        <translation>{path}: {n} Takte, die schlimmsten zuerst.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/export.py"/>
        <source>{path}: {n} note as {form}</source>
        <translation>{path}: {n} Ton als {form}</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/export.py"/>
        <source>{path}: {n} notes as {form}</source>
        <translation>{path}: {n} Töne als {form}</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/handout.py"/>
        <source>{path}: {size}.</source>
        <translation>{path}: {size}.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/features.py"/>
        <source>{percent} % of the greatest span</source>
        <translation>{percent} % der größten Spannweite</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/keys.py"/>
        <source>{piece} - {instrument}; written in {key}</source>
        <translation>{piece} – {instrument}; notiert in {key}</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>{pitch} ({role}) ends after {length}: it would sound above the tune.</source>
        <translation>{pitch} ({role}) endet nach {length}: Die Note klänge über der Melodie.</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>{pitch} ({role}) ends after {length}: its string is needed.</source>
        <translation>{pitch} ({role}) endet nach {length}: Seine Saite wird gebraucht.</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>{pitch} ({role}) goes {way} to {other}: {why}.</source>
        <translation>{pitch} ({role}) geht {way} zu {other}: {why}.</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>{pitch} ({role}) is left out: {why}.</source>
        <translation>{pitch} ({role}) wird weggelassen: {why}.</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>{pitch} and {other} need the same string at once</source>
        <translation>{pitch} und {other} brauchen zugleich dieselbe Saite</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/notes.py"/>
        <source>{pitch} has no other name with at most one sign.</source>
        <translation>{pitch} hat keinen anderen Namen mit höchstens einem Vorzeichen.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/lengths.py"/>
        <source>{pitch} in {bar} is not tied over the bar line; there is nothing to untie.</source>
        <translation>{pitch} in {bar} ist nicht über den Taktstrich gebunden; es gibt keinen Haltebogen zu lösen.</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>{pitch} is an open string there and takes no finger</source>
        <translation>{pitch} ist dort eine leere Saite und braucht keinen Finger</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>{pitch} is stopped there and needs a finger, 1 to 4</source>
        <translation>{pitch} ist dort gegriffen und braucht einen Finger, 1 bis 4</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/notes.py"/>
        <source>{pitch} is struck there already in this voice; choose another pitch.</source>
        <translation>{pitch} wird dort in dieser Stimme schon angeschlagen; wählen Sie eine andere Tonhöhe.</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>{pitch} lies above the range of the {instrument}</source>
        <translation>{pitch} liegt über dem Umfang ({instrument})</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>{pitch} lies below the range of the {instrument}</source>
        <translation>{pitch} liegt unter dem Umfang ({instrument})</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>{pitch} lies outside the range of the {instrument}</source>
        <translation>{pitch} liegt außerhalb des Umfangs ({instrument})</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/line.py"/>
        <source>{pitch} lies outside what can be written; choose C0 to G9.</source>
        <translation>{pitch} liegt außerhalb dessen, was sich schreiben lässt; wählen Sie C0 bis G9.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/pair_view.py"/>
        <source>{pitch} of the original is left out.</source>
        <translation>{pitch} des Originals ist weggelassen.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/pair_view.py"/>
        <source>{pitch} of the original lies {way}: {other}.</source>
        <translation>{pitch} des Originals liegt {way}: {other}.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/pair_view.py"/>
        <source>{pitch} of the original stays: {other}.</source>
        <translation>{pitch} des Originals bleibt: {other}.</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>{pitch} of the tune goes {way} to {other} with its phrase: the instrument does not have all of it as written.</source>
        <translation>{pitch} der Melodie geht mit seiner Phrase {way} zu {other}: Das Instrument hat sie nicht ganz, wie sie notiert ist.</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>{pitch} of the tune goes {way} to {other}: the instrument does not have it in the octave of its phrase. Listen whether the tune bears it.</source>
        <translation>{pitch} der Melodie geht {way} zu {other}: Das Instrument hat ihn nicht in der Oktave seiner Phrase. Hören Sie, ob die Melodie das verträgt.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/choices/why_table.py"/>
        <source>{pitch} sounds on {places}</source>
        <translation>{pitch} klingt auf {places}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/scope.py"/>
        <source>{pitch}, beat {beat}</source>
        <translation>{pitch}, Schlag {beat}</translation>
    </message>
    <message>
        <location filename="../../workbench/store/opening.py"/>
        <source>{place} holds something other than lessons and was left as it is; name another place in {variable}.</source>
        <translation>{place} enthält etwas anderes als Lektionen und wurde nicht angetastet; nennen Sie in {variable} einen anderen Ort.</translation>
    </message>
    <message>
        <location filename="../../workbench/music/parsing/staves.py"/>
        <source>{place}: {pitch} lies outside the range of MIDI notes (0 to 127); mend the pitch in the score.</source>
        <translation>{place}: {pitch} liegt außerhalb der MIDI-Töne (0 bis 127); berichtigen Sie die Tonhöhe in den Noten.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/writing/writer.py"/>
        <source>{place}; note at hand {pitch}</source>
        <translation>{place}; gewählter Ton {pitch}</translation>
    </message>
    <message>
        <location filename="../../workbench/cli.py"/>
        <source>{program}: name a verb ({verbs}), or none for the window.</source>
        <translation>{program}: Nennen Sie ein Verb ({verbs}) oder keines für das Fenster.</translation>
    </message>
    <message>
        <location filename="../../workbench/cli.py"/>
        <source>{prog}: {wrong}; see {prog} --help.</source>
        <translation>{prog}: {wrong}; siehe {prog} --help.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/shelf.py"/>
        <source>{said}; also in '{title}'</source>
        <translation>{said}; auch in „{title}“</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/shelf.py"/>
        <source>{said}; also in '{title}' and {n} more</source>
        <translation>{said}; auch in „{title}“ und {n} weiteren</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/fit_report.py"/>
        <source>{school} meets {met}.</source>
        <translation>„{school}“ trifft {met}.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/one_page.py"/>
        <source>{score} takes more than {memory} MB; take fewer parts (--parts 1), or allow more (--memory).</source>
        <translation>{score} braucht mehr als {memory} MB; nehmen Sie weniger Stimmen (--parts 1), oder erlauben Sie mehr (--memory).</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/one_page.py"/>
        <source>{score} takes more than {seconds:g} s of the processor's time; take fewer parts (--parts 1), or allow more (--seconds).</source>
        <translation>{score} braucht mehr als {seconds:g} s Rechenzeit; nehmen Sie weniger Stimmen (--parts 1) oder erlauben Sie mehr (--seconds).</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/one_page.py"/>
        <source>{score} was given up after {minutes} min on the clock; where the machine was busy with other things, call the batch again with --resume.</source>
        <translation>{score} wurde nach {minutes} min auf der Uhr aufgegeben; war der Rechner mit anderem beschäftigt, rufen Sie den Stapel mit --resume noch einmal auf.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/one_page.py"/>
        <source>{score}: its process died; it may need more memory (--memory) or fewer parts (--parts 1).</source>
        <translation>{score}: Der Prozess brach ab; vielleicht braucht er mehr Speicher (--memory) oder weniger Stimmen (--parts 1).</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/words.py"/>
        <source>{sections}. Order: {order}</source>
        <translation>{sections}. Ablauf: {order}</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/bars/form_words.py"/>
        <source>{section} ({bars}) is in {key}, and ends with a {close} ({before} to {last}).</source>
        <translation>{section} ({bars}) steht in {key} und endet mit einem {close} ({before} nach {last}).</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/bars/form_words.py"/>
        <source>{section} ({bars}) is in {key}.</source>
        <translation>{section} ({bars}) steht in {key}.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/scripts/script.py"/>
        <source>{section}, time {time}</source>
        <translation>{section}, {time}. Mal</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/view.py"/>
        <source>{section}, {time}</source>
        <translation>{section}, {time}</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/legato.py"/>
        <source>{share:.1%} of the written length is held; {cut} of {notes} notes are cut short.</source>
        <translation>{share:.1%} der notierten Länge werden gehalten; {cut} von {notes} Tönen sind gekürzt.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/verdict.py"/>
        <source>{share} % less effort in the whole piece</source>
        <translation>{share} % weniger Aufwand im ganzen Stück</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/verdict.py"/>
        <source>{share} % more effort in the whole piece</source>
        <translation>{share} % mehr Aufwand im ganzen Stück</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>{share} of the grips suit the level</source>
        <translation>{share} der Griffe passen zur Stufe</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/features.py"/>
        <source>{signs}, notes outside the key a bar: {more}</source>
        <translation>{signs}, leiterfremde Töne je Takt: {more}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/arranging/easier_dialog.py"/>
        <source>{strict}, up to fret {fret}: {grade}, {notes}</source>
        <translation>{strict}, bis Bund {fret}: {grade}, {notes}</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/arrange.py"/>
        <source>{strict}, up to fret {fret}: {grade}, {notes} notes</source>
        <translation>{strict}, bis Bund {fret}: {grade}, {notes} Noten</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/pack.py"/>
        <source>{target}: the student's pack.</source>
        <translation>{target}: das Schülerpaket.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/sound.py"/>
        <source>{target}: {seconds:.1f} seconds.</source>
        <translation>{target}: {seconds:.1f} Sekunden.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/view.py"/>
        <source>{technique} ({family})</source>
        <translation>{technique} ({family})</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/techniques/catalogue.py"/>
        <source>{technique} in {bars}: {asks}</source>
        <translation>{technique} ({bars}): {asks}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/view.py"/>
        <source>{technique}, new</source>
        <translation>{technique}, neu</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/comparing.py"/>
        <source>{text} beat</source>
        <translation>{text} Schlag</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/comparing.py"/>
        <source>{text} beats</source>
        <translation>{text} Schläge</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/shape.py"/>
        <source>{text} on {instrument}: {name}</source>
        <translation>{text} auf {instrument}: {name}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/plan/view.py"/>
        <source>{time} in all</source>
        <translation>{time} insgesamt</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/plan_sheet.py"/>
        <source>{time} in {n} day</source>
        <translation>{time} an {n} Tag</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/plan_sheet.py"/>
        <source>{time} in {n} days, {minutes} min a day</source>
        <translation>{time} an {n} Tagen, {minutes} min am Tag</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/files.py"/>
        <source>{time} of practice, {minutes} minutes a day, to day {last}.</source>
        <translation>{time} Üben, {minutes} Minuten pro Tag, bis Tag {last}.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/files.py"/>
        <source>{time} of practice, {minutes} minutes a day.</source>
        <translation>{time} Üben, {minutes} Minuten pro Tag.</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/reading.py"/>
        <source>{time} of {whole}</source>
        <translation>{time} von {whole}</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/words.py"/>
        <source>{time}, {minutes} min a day</source>
        <translation>{time}, {minutes} min am Tag</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/bench/keeper.py"/>
        <source>{title} (my changes)</source>
        <translation>{title} (meine Änderungen)</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/grade.py"/>
        <source>{title} - {instrument}: {grade} (an estimate)</source>
        <translation>{title} – {instrument}: {grade} (geschätzt)</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/scripts/words.py"/>
        <source>{title} by {composer}, in {key}.</source>
        <translation>{title} von {composer}, in {key}.</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/fit_report.py"/>
        <source>{title}, bar {number}</source>
        <translation>{title}, Takt {number}</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/files/passage.py"/>
        <source>{title}, bars {first}–{last}</source>
        <translation>{title}, Takt {first}–{last}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/notes/attach.py"/>
        <location filename="../../workbench/ui/notes/dialogs.py"/>
        <source>{title}, for {student}</source>
        <translation>{title}, für {student}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/techniques/shelf.py"/>
        <source>{title}, grade {grade}</source>
        <translation>{title}, Stufe {grade}</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/scripts/words.py"/>
        <source>{title}, in {key}.</source>
        <translation>{title}, in {key}.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/grip_sheet.py"/>
        <source>{title}: grips</source>
        <translation>{title}: Griffe</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/plan_sheet.py"/>
        <location filename="../../workbench/teaching/planning/files.py"/>
        <source>{title}: practice plan</source>
        <translation>{title}: Übeplan</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/script/reading.py"/>
        <source>{title}: script</source>
        <translation>{title}: Skript</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/techniques/exercises.py"/>
        <source>{title}: {bar}, {kind}</source>
        <translation>{title}: {bar}, {kind}</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/keeping/left_dialog.py"/>
        <source>{title}: {label} ({when})</source>
        <translation>{title}: {label} ({when})</translation>
    </message>
    <message>
        <location filename="../../workbench/commands/plan.py"/>
        <source>{title}: {time} in all, {minutes} minutes a day</source>
        <translation>{title}: insgesamt {time}, {minutes} Minuten am Tag</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/pins/typed.py"/>
        <source>{typed} figures for {notes} notes; type one figure for each note.</source>
        <translation>{typed} Angaben für {notes} Töne; tippen Sie für jeden Ton eine Angabe.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/features.py"/>
        <source>{value} a bar</source>
        <translation>{value} je Takt</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/features.py"/>
        <source>{value} a bar (a full barre counts twice)</source>
        <translation>{value} je Takt (ein großes Barré zählt doppelt)</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/features.py"/>
        <source>{value} a second where they come fastest</source>
        <translation>{value} je Sekunde, wo sie am schnellsten kommen</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/features.py"/>
        <source>{value} on average</source>
        <translation>{value} im Mittel</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/features.py"/>
        <source>{value} point</source>
        <translation>{value} Punkt</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/features.py"/>
        <source>{value} points</source>
        <translation>{value} Punkte</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/features.py"/>
        <source>{value} semitone</source>
        <translation>{value} Halbton</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/features.py"/>
        <source>{value} semitones</source>
        <translation>{value} Halbtöne</translation>
    </message>
    <message>
        <location filename="../../workbench/music/edits/lengths.py"/>
        <source>{value}, triplet</source>
        <translation>{value}, Triole</translation>
    </message>
    <message>
        <location filename="../../workbench/store/opening.py"/>
        <source>{variable} is no database URL; write one like sqlite:////folder/lessons.db, or the path of a file.</source>
        <translation>{variable} ist keine Datenbank-URL; schreiben Sie eine wie sqlite:////folder/lessons.db oder den Pfad einer Datei.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/opening.py"/>
        <source>{variable}: the driver for a '{driver}' database is not installed; install it with pip, or name a SQLite file.</source>
        <translation>{variable}: Der Treiber für eine „{driver}“-Datenbank ist nicht installiert; installieren Sie ihn mit pip oder nennen Sie eine SQLite-Datei.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/opening.py"/>
        <source>{variable}: this address of a database cannot be used; write one like postgresql://user@server/lessons, or the path of a file.</source>
        <translation>{variable}: Diese Adresse einer Datenbank kann nicht verwendet werden; schreiben Sie eine wie postgresql://benutzer@server/lektionen oder den Pfad einer Datei.</translation>
    </message>
    <message>
        <location filename="../../workbench/store/documents.py"/>
        <source>{what} is damaged in the lesson store; go back to a version of the lesson or restore the store from a copy.</source>
        <translation>{what} ist im Lektionsspeicher beschädigt; gehen Sie auf eine Fassung der Lektion zurück oder stellen Sie den Speicher aus einer Kopie wieder her.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/items.py"/>
        <source>{what} {where}</source>
        <comment>plan</comment>
        <translation>{what}: {where}</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/files.py"/>
        <source>{what}, {n} minute</source>
        <translation>{what}, {n} Minute</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/planning/files.py"/>
        <source>{what}, {n} minutes</source>
        <translation>{what}, {n} Minuten</translation>
    </message>
    <message>
        <location filename="../../workbench/fingering/telling/words.py"/>
        <source>{what}: {difference}.</source>
        <translation>{what}: {difference}.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>{where}: not pinned any more.</source>
        <translation>{where}: nicht mehr festgelegt.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>{where}: pinned to {old}, now {new}.</source>
        <translation>{where}: war auf {old} festgelegt, jetzt {new}.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/differences.py"/>
        <source>{where}: pinned to {pin}.</source>
        <translation>{where}: festgelegt auf {pin}.</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/bar_rows.py"/>
        <source>{which} ending</source>
        <translation>{which} Klammer</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/lessons/bar_rows.py"/>
        <source>{which} time</source>
        <translation>{which} Mal</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/features.py"/>
        <source>{whole} different bar</source>
        <translation>{whole} verschiedener Takt</translation>
    </message>
    <message>
        <location filename="../../workbench/teaching/grading/features.py"/>
        <source>{whole} different bars</source>
        <translation>{whole} verschiedene Takte</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>{whole} quarters</source>
        <translation>{whole} Vierteln</translation>
    </message>
    <message>
        <location filename="../../workbench/arranging/words.py"/>
        <source>{whole} {part} quarters</source>
        <translation>{whole} {part} Vierteln</translation>
    </message>
    <message>
        <location filename="../../workbench/store/sheet_facts.py"/>
        <source>{words} and {n} more</source>
        <translation>{words} und {n} weitere</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/material.py"/>
        <source>{words}; chords {chords}</source>
        <translation>{words}; Akkorde {chords}</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/parts/words.py"/>
        <source>ˇ after a letter: rest stroke, the finger comes to rest on the next string.</source>
        <translation>ˇ nach einem Buchstaben: angelegter Anschlag, der Finger kommt auf der nächsten Saite zur Ruhe.</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/pack_words.py"/>
        <location filename="../../workbench/ui/player/bar.py"/>
        <source>■ Stop</source>
        <translation>■ Halt</translation>
    </message>
    <message>
        <location filename="../../workbench/ui/views/plan/view.py"/>
        <source>▶ &amp;Practise</source>
        <translation>▶ Ü&amp;ben</translation>
    </message>
    <message>
        <location filename="../../workbench/handout/sheets/pack_words.py"/>
        <location filename="../../workbench/ui/player/bar.py"/>
        <source>▶ Play</source>
        <translation>▶ Abspielen</translation>
    </message>
</context>
</TS>
