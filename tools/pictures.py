"""Makes small drawings of a result folder that can be painted, lines as wide as a screen wants them.

  --briefly JOB COPY               makes the job for it
  --pieces FOLDER TARGET LABEL...  the patterns of some pieces on one sheet, as the report draws them
"""
import json
import pathlib
import re
import sys
import xml.etree.ElementTree as tree

SVG = "{http://www.w3.org/2000/svg}"
# Length of roll that one picture shows, millimetres.
LONGEST = 8000


def thicken(source, target, longest=None):
    """A drawing of true size, its lines a seven-hundredth of its width, cut off after a length."""
    tree.register_namespace("", SVG[1:-1])
    root = tree.parse(source).getroot()
    left, top, width, height = (float(part) for part in root.get("viewBox").split())
    if longest is not None:
        left, width = max(left, -100), min(width, longest)
    root.set("viewBox", f"{left} {top} {width} {height}")
    root.set("width", str(width))
    root.set("height", str(height))
    for element in root.iter():
        if element.get("stroke-width"):
            element.set("stroke-width", str(width / 700))
            element.attrib.pop("vector-effect", None)
        if element.get("stroke-dasharray"):
            element.set("stroke-dasharray", f"{width / 100} {width / 200}")
    tree.ElementTree(root).write(target, encoding="utf-8", xml_declaration=True)


def rules(page):
    """The report's own style for its figures."""
    style = re.search(r"<style>(.*?)</style>", page, re.DOTALL).group(1)
    return "\n".join(line.replace("svg.figure ", "") for line in style.splitlines() if "svg.figure ." in line or "svg.figure text" in line or "svg.figure poly" in line)


def find(page, name):
    """What stands in a figure of the report whose title begins with a name, from the attributes of its svg on."""
    for found in re.finditer(r"<svg class=\"figure\"(.*?)</svg>", page, re.DOTALL):
        if "<title>" + name in found.group(0):
            return found.group(1)
    raise SystemExit(f"no figure named {name}")


def figure(page, name, target):
    """A figure of the report, with its style."""
    pathlib.Path(target).write_text(f'<svg xmlns="http://www.w3.org/2000/svg"{find(page, name)}<style>{rules(page)}</style></svg>', encoding="utf-8")


def pieces(folder, target, labels, widest=230, gap=8):
    """The patterns of some pieces side by side, millimetres of the report, each with the piece's label and what it is."""
    page = (folder / "report.html").read_text(encoding="utf-8")
    made = json.loads((folder / "pieces.json").read_text(encoding="utf-8"))
    kinds = {pattern["id"]: re.sub("([A-Z])", lambda letter: " " + letter[1].lower(), pattern["kind"]) for pattern in made["patterns"]}
    pattern_of = {piece["label"]: piece["pattern"] for piece in made["pieces"]}
    x = y = high = wide = 0
    drawn = []
    for label in labels:
        body = find(page, f"Pattern {pattern_of[label]}<")
        width, height = (float(side) for side in re.search(r'viewBox="\S+ \S+ (\S+) (\S+)"', body).groups())
        if x > 0 and x + width > widest:
            x, y, high = 0, y + high + gap, 0
        body = re.sub(r' role="img" width="[^"]*" height="[^"]*"', f' x="{x}" y="{y + 6}" width="{width}" height="{height}"', body, count=1)
        drawn.append(f'<text x="{x}" y="{y + 4}" font-size="4">{label}, {kinds[pattern_of[label]]}</text><svg{body}</svg>')
        x, high, wide = x + width + gap, max(high, height + 6), max(wide, x + width)
    pathlib.Path(target).write_text(
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="-2 -2 {wide + 4} {y + high + 4}"><style>{rules(page)}</style>{"".join(drawn)}</svg>', encoding="utf-8")


def briefly(job, target):
    """A copy of a job file whose lays are searched for only briefly: a picture is not cut from."""
    text = pathlib.Path(job).read_text(encoding="utf-8")
    text, count = re.subn(r'"effort":\s*\d+', '"effort": 1', text)
    if not count:
        text, count = re.subn(r'"lay":\s*\{', '"lay": { "effort": 1, ', text)
    if not count:
        body = text.rstrip().removesuffix("}").rstrip()
        text = body + ("" if body.endswith(",") else ",") + '\n  "lay": { "effort": 1 }\n}\n'
    pathlib.Path(target).write_text(text, encoding="utf-8")


if sys.argv[1] == "--briefly":
    briefly(sys.argv[2], sys.argv[3])
    raise SystemExit
if sys.argv[1] == "--pieces":
    pieces(pathlib.Path(sys.argv[2]), sys.argv[3], sys.argv[4:])
    raise SystemExit

folder = pathlib.Path(sys.argv[1])
first = json.loads((folder / "lays.json").read_text(encoding="utf-8"))["lays"][0]["cloth"]
thicken(folder / "pieces.svg", folder / "small-patterns.svg")
thicken(folder / f"lay-{first}.svg", folder / "small-lay.svg", LONGEST)
report = (folder / "report.html").read_text(encoding="utf-8")
figure(report, "All pieces at their places", folder / "small-plan.svg")
figure(report, "Row 1,", folder / "small-row.svg")
