"use strict";
/* The lesson stands in lesson.js; nothing here asks anything of a network. */
(function () {
  const lesson = window.LESSON;
  const kept = store("lesson:" + lesson.id);
  const sound = document.getElementById("sound");
  const at = (id) => document.getElementById(id);
  let language = kept.get("language", lesson.language);
  let ticks = new Set(kept.get("ticks", lesson.done));
  let tempo = kept.get("tempo", lesson.tempos[lesson.tempos.length - 1]);
  if (!lesson.tempos.includes(tempo)) tempo = lesson.tempos[lesson.tempos.length - 1];
  let loop = false;
  let span = null; // first and last place of the playing order, or null for all
  let item = null; // the plan's item that plays, or null for the piece
  let place = -1;  // place of the bar that is heard

  function store(name) {
    let all = {};
    try { all = JSON.parse(localStorage.getItem(name)) || {}; } catch (fault) { all = {}; }
    return {
      get: (key, otherwise) => (key in all ? all[key] : otherwise),
      set: (key, value) => {
        all[key] = value;
        try { localStorage.setItem(name, JSON.stringify(all)); } catch (fault) { /* kept till closed */ }
      },
    };
  }

  const words = () => lesson.words[language];
  const fill = (text, fields) => text.replace(/\{(\w+)\}/g, (_, name) => fields[name]);
  const scale = () => 100 / tempo;
  const begins = (n) => lesson.bars[n].start * scale();
  const ends = (n) => (lesson.bars[n].start + lesson.bars[n].seconds) * scale();

  function make(name, fields, ...inside) {
    const made = document.createElement(name);
    Object.assign(made, fields);
    made.append(...inside);
    return made;
  }

  function spell() {
    const w = words();
    document.documentElement.lang = language;
    document.title = lesson.title;
    at("title").textContent = lesson.title;
    at("about").textContent = w.about;
    at("language").textContent = w.other;
    at("larger").textContent = w.larger;
    at("left").textContent = w.left;
    at("sheet").textContent = w.sheet;
    at("bars-heading").textContent = w.bars;
    at("hint").textContent = w.hint;
    at("care").textContent = w.care;
    at("tempo-word").textContent = w.tempo;
    at("loop").textContent = w.loop;
    at("controls").setAttribute("aria-label", w.controls);
    at("cautions").replaceChildren(...w.cautions.map((text) => make("li", { textContent: text })));
    at("tempo").replaceChildren(...lesson.tempos.map(
      (percent) => make("option", { value: percent, textContent: percent + " %" })));
    at("tempo").value = tempo;
    layBars();
    layPlan();
    tell();
  }

  function layBars() {
    at("bars").replaceChildren(...lesson.bars.map((bar, n) => {
      const name = fill(words().bar, { bar: bar.number });
      const button = make("button", { type: "button", onclick: () => tap(n) },
        make("span", { textContent: name }),
        make("img", { src: bar.picture, alt: fill(words().picture, { bar: bar.number }) }));
      button.dataset.place = n;
      return make("li", {}, button);
    }));
    paint();
  }

  function today() {
    const days = words().days;
    const open = days.findIndex((day) => day.items.some((one) => !ticks.has(one.id)));
    return open < 0 ? null : days[open];
  }

  function layPlan() {
    const day = today();
    at("today").textContent = day ? fill(words().today, { day: day.day }) : words().alldone;
    at("later").textContent = day ? fill(words().later, { last: words().days.at(-1).day }) : "";
    at("plan").replaceChildren(...(day ? day.items : []).map((one) => {
      const box = make("input", { type: "checkbox", id: "tick-" + one.id, checked: ticks.has(one.id) });
      box.onchange = () => {
        if (box.checked) ticks.add(one.id); else ticks.delete(one.id);
        kept.set("ticks", [...ticks]);
        row.classList.toggle("done", box.checked);
        if (!day.items.some((other) => !ticks.has(other.id))) layPlan();
      };
      const label = make("label", { htmlFor: box.id }, one.what,
        make("small", { textContent: one.how }));
      const row = make("li", { className: box.checked ? "done" : "" }, box, label);
      row.append(make("span", { className: "tracks" }, ...one.tracks.map((track) =>
        make("button", { type: "button", textContent: "▶ " + track.tempo + " %",
          ariaLabel: fill(words().hear, { what: one.what, tempo: track.tempo }),
          onclick: () => practise(one, track) }))));
      return row;
    }));
  }

  function load(source) {
    if (sound.dataset.source !== source) {
      sound.dataset.source = source;
      sound.src = encodeURI(source);
    }
  }

  function from(seconds) {
    const go = () => { sound.currentTime = seconds; };
    if (sound.readyState >= 1) go(); else sound.addEventListener("loadedmetadata", go, { once: true });
    const asked = sound.play();
    if (asked) asked.catch(() => tell(words().nosound));
  }

  function tap(n) {
    item = null;
    span = loop && span && span[0] !== n && n > span[0] && span[0] === span[1] ? [span[0], n] : [n, n];
    if (!loop) span = [n, lesson.bars.length - 1];
    load(lesson.tracks[tempo]);
    place = n;
    from(begins(span[0]));
    paint();
  }

  function practise(one, track) {
    item = one;
    span = null;
    place = -1;
    load(track.file);
    from(0);
    paint();
  }

  function toggle() {
    if (!sound.paused) { sound.pause(); return; }
    if (item) { from(sound.currentTime); return; }
    load(lesson.tracks[tempo]);
    if (!span) span = [0, lesson.bars.length - 1];
    from(begins(place >= span[0] && place <= span[1] && !sound.ended ? place : span[0]));
  }

  function setLoop(on) {
    loop = on;
    at("loop").setAttribute("aria-pressed", String(on));
    if (span && on && place >= 0) span = [place, place];
    if (span && !on) span = [span[0], lesson.bars.length - 1];
    paint();
  }

  function setTempo(percent) {
    tempo = percent;
    kept.set("tempo", percent);
    at("tempo").value = percent;
    if (item) return;
    const playing = !sound.paused;
    load(lesson.tracks[tempo]);
    if (playing) from(begins(Math.max(0, place)));
  }

  function follow() {
    if (item) {
      if (loop && sound.ended) from(0);
      return;
    }
    if (!span || sound.readyState < 1) return;
    const now = sound.currentTime;
    if (loop && (now >= ends(span[1]) - 0.005 || sound.ended)) { from(begins(span[0])); return; }
    let found = -1;
    for (let n = 0; n < lesson.bars.length && begins(n) <= now + 0.01; n += 1) found = n;
    if (found !== place && !sound.paused) { place = found; paint(true); }
  }

  function paint(bring) {
    for (const button of at("bars").querySelectorAll("button")) {
      const n = Number(button.dataset.place);
      button.classList.toggle("heard", n === place && !item);
      button.classList.toggle("chosen", Boolean(loop && span && n >= span[0] && n <= span[1]));
      if (bring && n === place) button.scrollIntoView({ block: "nearest" });
    }
    tell();
  }

  function tell(said) {
    at("play").textContent = sound.paused ? words().play : words().stop;
    let text = said || "";
    if (!said && item) text = item.what;
    else if (!said && place >= 0) text = fill(words().bar, { bar: lesson.bars[place].number });
    at("now").textContent = text;
  }

  at("play").onclick = toggle;
  at("loop").onclick = () => setLoop(!loop);
  at("tempo").onchange = (event) => setTempo(Number(event.target.value));
  at("language").onclick = () => {
    language = language === "en" ? "de" : "en";
    kept.set("language", language);
    spell();
  };
  for (const [id, name] of [["larger", "large"], ["left", "left"]]) {
    const set = (on) => {
      document.documentElement.classList.toggle(name, on);
      at(id).setAttribute("aria-pressed", String(on));
    };
    set(kept.get(name, lesson[name]));
    at(id).onclick = () => {
      const on = at(id).getAttribute("aria-pressed") !== "true";
      set(on);
      kept.set(name, on);
    };
  }
  for (const event of ["play", "pause", "ended"]) sound.addEventListener(event, () => { follow(); tell(); });
  sound.addEventListener("error", () => tell(words().nosound));
  setInterval(follow, 15);

  document.addEventListener("keydown", (event) => {
    const name = event.target.tagName;
    if (event.ctrlKey || event.altKey || event.metaKey || name === "SELECT") return;
    const step = lesson.tempos.indexOf(tempo);
    if (event.key === " " && name !== "BUTTON" && name !== "INPUT" && name !== "A") toggle();
    else if (event.key === "ArrowRight" || event.key === "ArrowLeft") {
      const here = name === "BUTTON" && event.target.dataset.place !== undefined
        ? Number(event.target.dataset.place) : place;
      const next = Math.min(lesson.bars.length - 1, Math.max(0, here + (event.key === "ArrowRight" ? 1 : -1)));
      at("bars").querySelector(`[data-place="${next}"]`).focus();
    } else if (event.key.toLowerCase() === "l") setLoop(!loop);
    else if (event.key === "+" && step < lesson.tempos.length - 1) setTempo(lesson.tempos[step + 1]);
    else if (event.key === "-" && step > 0) setTempo(lesson.tempos[step - 1]);
    else return;
    event.preventDefault();
  });

  spell();
}());
