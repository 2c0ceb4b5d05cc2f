"""Makes small drawings of a result folder that can be painted, lines as wide as a screen wants them; --briefly JOB COPY makes the job for it."""
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


def figure(page, name, target):
    """A figure of the report whose title begins with a name, with the report's own style."""
    style = re.search(r"<style>(.*?)</style>", page, re.DOTALL).group(1)
    rules = "\n".join(line.replace("svg.figure ", "") for line in style.splitlines() if "svg.figure ." in line or "svg.figure text" in line or "svg.figure poly" in line)
    for found in re.finditer(r"<svg class=\"figure\"(.*?)</svg>", page, re.DOTALL):
        if "<title>" + name in found.group(0):
            pathlib.Path(target).write_text(
                f'<svg xmlns="http://www.w3.org/2000/svg"{found.group(1)}<style>{rules}</style></svg>', encoding="utf-8")
            return
    raise SystemExit(f"no figure named {name}")


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

folder = pathlib.Path(sys.argv[1])
first = json.loads((folder / "lays.json").read_text(encoding="utf-8"))["lays"][0]["cloth"]
thicken(folder / "pieces.svg", folder / "small-patterns.svg")
thicken(folder / f"lay-{first}.svg", folder / "small-lay.svg", LONGEST)
report = (folder / "report.html").read_text(encoding="utf-8")
figure(report, "All pieces at their places", folder / "small-plan.svg")
figure(report, "Row 1,", folder / "small-row.svg")
