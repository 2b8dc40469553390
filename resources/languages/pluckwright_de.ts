<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Pluckwright</name>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>A chord taken apart, one finger for each string, every note ringing into the next.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>A chord that rolls by accident.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>A finger stays on its string and slides lightly to the next fret, leading the hand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>A finger that is needed again stays down while the others move.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>A finger that repeats at a string crossing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>A gap longer than it need be.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>A long note and a short one share the time unevenly; count the small values.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>A new key signature; play its scale once in this position.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>A note begins off the beat and sounds across it; feel the beat that is not played.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>A note cannot be kept for its full length here; let it go on purpose, in time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>A note that ends by accident.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>A quick note that leans on the one it leads to.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>A sign sends the player back or on to another place; mark both places in colour.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>All four right-hand fingers pluck at once, the top note a little louder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Beats that fall into three, as in 6/8.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Counting on as if nothing were there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Counting six equal beats with no swing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Fingers farther apart than they like to be; open the hand from its knuckles before the note.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Fingers that leave their strings' places.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Flattening more strings than are needed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Forgetting that a sign lasts to the end of its bar.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Hammering from too high.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Hold the note longer than written, and decide together how long.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Keeping the old stress.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Letting go with the moving voice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Lifting fingers before they must.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Lifting it out of habit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Lifting straight up, without sound.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Looking for every fret afresh.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Losing the count.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Neighbouring notes lie on different strings, so that they ring into one another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Notes of the old key.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Notes outside the key; find them on the neck before playing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>One finger stops two or more strings, not all of them; lay it on its side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>One note keeps sounding while another voice moves on above or below it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>One pair of fingers gives way to another, such as 1-2 to 3-4, so that nothing has to jump.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>One string sounding before the other.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Pain. Stop, rest, and try it higher up the neck.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Playing on in the colour of before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Playing the first ending twice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Preparing the new pair too late.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Pressing the string down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Pressing while sliding, so that it squeaks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Rushing the open note.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Searching for the place while the music waits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Several notes in a row with the thumb from the side of the nail or the flesh, even and round.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Short notes turning into loud ones.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Short notes with silence after them; the finger that plays next stops the string.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Squeezing with the thumb in place of the arm's weight.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Stealing time from the beat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Stressing the pickup like a first beat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The finger comes to rest on the next string, for a fuller melody note.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The first beat is felt, not played.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The first finger lies across all strings, close to the fret, straight and turned to its side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The hand jumps over a string and must land without looking.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The hand plays in a higher position, where frets lie closer together.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The hand travels while an open string sounds, so that no one hears it move.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The lower note late.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The music is in a minor key here; listen how its colour and its chords change.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The note arriving on the beat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The number or kind of beats changes from one bar to the next.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The passage is played again and ends otherwise the second time; see the leap before it comes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The resting finger damping a string that should ring.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The ring finger late.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The same finger must go to another string at once; the note before it is let go a moment early.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The same note several times with changing fingers, each as clear as the first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The second note is sounded by a left finger falling on the string.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The second note is sounded by a left finger pulling aside as it leaves; the lower finger is there already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The thumb staying behind.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The tone thins out while the left finger lifts too soon.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The tune begins before the first full bar; count a whole bar and come in on time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The upper note too weak.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The whole hand moves along the neck to another position; thumb and arm go together.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>The wrist bouncing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Three even notes in the time of two.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Thumb and one finger pluck two strings at the same moment, moving towards each other.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Thumb, index and middle pluck three strings at once; prepare all three before the sound.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Touch the string right over the fret, pluck near the bridge, lift at once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Touching the string between.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Turning it into triplets.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Two fingers pluck neighbouring strings as one, from the knuckles.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Two fingers take turns on a single line, evenly, and neither plays twice running.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Two quick ones and a slow one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>Two voices move together in thirds or sixths; the hand learns a few shapes and slides between them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>a bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>a bar (a full barre counts twice)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a barre has to be laid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a finger has to be put down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a finger hops to another string and cuts the note it leaves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a finger is drawn back behind its own fret</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a finger leaves its string</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a finger leaves the string that is its own in the figure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a finger outside the chosen alternation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a fretted note where the open string sounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a guide finger slides along its string</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a held note blocks fingers that the notes beneath it could use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a held note is cut short</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a more relaxed hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>a second</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a squarer hand, one finger a fret</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>a weaker finger reaches for a far string</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>accidentals</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>alternating fingers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>an easier string crossing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>arpeggio</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>barres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>bell-like scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>change of key</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>change of time signature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>chord with p i m</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>chord with p i m a</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>compound time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>different bars</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>dotted rhythm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>each finger keeps its string</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>fermata</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>fewer fingers to put down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>finger 1 rolls down to a barre while it holds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>finger hop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>finger places</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>finger swap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>fingers 1 and 2 stand tight where 1 and 3 would hang relaxed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>fingers on neighbouring strings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>fingers stay on their strings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>first and second ending</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>form</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>fret</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>full barre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>grace note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>guide finger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>harmonic</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>held voice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>highest fret</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>keeps to the chosen alternation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>key</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>leap in the form</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>leaves lower fingers free</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>left hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>left hand alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>left-hand changes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>left-hand places to know</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>less shifting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>less shifting while fingers are busy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>less sliding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>less stretch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>less work for fingers 3 and 4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>longer held notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>loop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>lower on the neck</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>minor section</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>no crossed fingers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>no finger drawn back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>no finger twice running</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>no hop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>no new barre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>no rolling of finger 1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>note let go early</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>note tied over the bar line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>notes sounding together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>notes that have to be cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>of the greatest span</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>on average</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>partial barre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>patterns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>pickup</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>planted finger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>playing above the fourth fret</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>positions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>range</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>reach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>repeated notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>rest stroke</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <location filename="../../resources/techniques/grading.json"/>
        <source>rhythm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>rhythm alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>right hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>right hand alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>right-hand patterns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>semitones</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>sharps, flats and notes outside the key</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>shift</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>shift on an open string</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>shifts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>skipping a string</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>slow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>slur downwards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>slur upwards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>sound</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>speed of left-hand changes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>speed of the notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>staccato</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>stays in first position</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>stretch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/grading.json"/>
        <source>strings plucked together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>syncopation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the bass is not taken by the thumb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the fingers do not lie on neighbouring strings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the fingers keep the melody</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the hand is stretched beyond its comfortable span</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the hand leaves first position</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the hand leaves one finger a fret</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the hand shifts while an open string or a rest gives it time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the hand shifts while fingers are busy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the melody jumps to a string further away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the melody stays on neighbouring strings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the note lies high on the neck</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the same finger plucks twice running</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the string crossing is awkward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the stronger finger could lead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the stronger finger leads</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the thumb plays the melody</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the thumb takes the bass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>the weaker fingers do the work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>thirds and sixths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>thumb alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>thumb with finger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>triplets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>two fingers stand crossed on one fret</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/techniques/catalogue.json"/>
        <source>two fingers together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>uses the open string</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <location filename="../../resources/weights/fingering.json"/>
        <source>weak fingers stay near</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
