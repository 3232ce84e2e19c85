package datasheet_test

import (
	"bytes"
	"fmt"
	"strings"
	"testing"
	"unicode/utf16"

	"github.com/google/go-cmp/cmp"

	"stringline/schema/datasheet"
	"stringline/schema/design"
	"stringline/schema/hcltext"
	"stringline/schema/source"
)

func imported(text string, o datasheet.Options) (datasheet.Result, []string) {
	result, problems := datasheet.Import(source.NewFile("t.csv", []byte(text)), o)
	var lines []string
	for _, p := range problems {
		lines = append(lines, p.Error())
	}
	return result, lines
}

func mapOf(text string) *source.File { return source.NewFile("map.csv", []byte(text)) }

// checkText holds what is promised of a text: tidy, and read without a problem.
func checkText(t *testing.T, text []byte) *design.Design {
	t.Helper()
	tidy, problems := hcltext.Tidy(source.NewFile("p", text))
	if len(problems) > 0 || !bytes.Equal(tidy, text) {
		t.Errorf("not tidy (%v):\n%s", problems, text)
	}
	d := design.Load(design.Options{Path: "d.design.hcl", Text: append([]byte("design \"d\" {}\n"), text...)})
	if len(d.Problems) > 0 {
		t.Errorf("it cannot be read: %v\n%s", d.Problems, text)
	}
	return d
}

func TestImport(t *testing.T) {
	for _, c := range []struct {
		name, text string
		o          datasheet.Options
		want       string // without the first two lines
	}{
		{"units in headings, cells and either spelling", "name,voc [V],isc (A),Temp Voc [%/°C],cells,technology,length [mm],noct,note\n" +
			"Slate 410,37.4,13.95,\u22120.26,54,Mono-Si,1.722 m,45 °C,\"from the store, \"\"good\"\"\"\nDusk-335,36.9 V,11.52,-0.27,+54,mono_si,1690,-,\n",
			datasheet.Options{Part: "panel"}, `# t.csv, line 2: Slate 410
# from the store, "good"
panel "slate-410" {
  voc        = "37.4 V"
  isc        = "13.95 A"
  temp_voc   = "-0.26 %/K"
  noct       = "45 degC"
  cells      = 54
  technology = "mono_si"
  length     = "1.722 m"
}

# t.csv, line 3: Dusk-335
panel "dusk-335" {
  voc        = "36.9 V"
  isc        = "11.52 A"
  temp_voc   = "-0.27 %/K"
  cells      = 54
  technology = "mono_si"
  length     = "1690 mm"
}
`},
		{"a map, semicolons, decimal commas, V/K", "Typ;Uoc;Isc;TK Uoc;Farbe\nSlate 410;37,4;13,95;-0,097;black\n",
			datasheet.Options{Part: "panel", Columns: mapOf("column,attribute,unit\nTyp,name,\nUoc,voc,V\nIsc,isc,A\nTK Uoc,temp_voc,V/K\nFarbe,leave_out,\n")},
			"# t.csv, line 2: Slate 410\npanel \"slate-410\" {\n  voc      = \"37.4 V\"\n  isc      = \"13.95 A\"\n  temp_voc = \"-0.097 V/K\"\n}\n"},
		{"decimal commas where told", "name;voc [V]\nx;1,375 V\n", datasheet.Options{Part: "panel", Decimals: datasheet.Comma}, "# t.csv, line 2: x\npanel \"x\" {\n  voc = \"1.375 V\"\n}\n"},
		{"several kinds, a block inside, lists, yes and no", "part,name,nominal [V],bms.charge_cutoff [A],bms.precharge,bank_voltages,isolated,kind\n" +
			"battery,Fell 200,25.6,120,YES,,,\ncontroller,Ridge 85,,,,12/24/48 V,no,MPPT\ncontroller,Ridge 20,,,,12 V; 24 V,,\n",
			datasheet.Options{}, `# t.csv, line 2: Fell 200
battery "fell-200" {
  nominal = "25.6 V"
  bms {
    charge_cutoff = "120 A"
    precharge     = true
  }
}

# t.csv, line 3: Ridge 85
controller "ridge-85" {
  kind          = "mppt"
  bank_voltages = ["12 V", "24 V", "48 V"]
  isolated      = false
}

# t.csv, line 4: Ridge 20
controller "ridge-20" {
  bank_voltages = ["12 V", "24 V"]
}
`},
		{"wire gauges", "name,size [AWG],material\nstout,4/0,cu\nthin,10 AWG,CU\n", datasheet.Options{Part: "cable"},
			"# t.csv, line 2: stout\ncable \"stout\" {\n  size     = \"4/0 AWG\"\n  material = \"Cu\"\n}\n\n# t.csv, line 3: thin\ncable \"thin\" {\n  size     = \"10 AWG\"\n  material = \"Cu\"\n}\n"},
		// RFC 4180, section 2: CRLF, no line end behind the last row, blanks, commas and doubled quotes in quotes.
		{"as RFC 4180 has it", "\uFEFFname,connector,voc [V]\r\n\"a, \"\"b\"\"\",\"x,y\",\"37.4\"\r\n\r\nc, tarn-4 ,36", datasheet.Options{Part: "panel"},
			"# t.csv, line 2: a, \"b\"\npanel \"a-b\" {\n  voc       = \"37.4 V\"\n  connector = \"x,y\"\n}\n\n# t.csv, line 4: c\npanel \"c\" {\n  voc       = \"36 V\"\n  connector = \"tarn-4\"\n}\n"},
	} {
		result, problems := imported(c.text, c.o)
		if len(problems) > 0 {
			t.Errorf("%s: %s", c.name, strings.Join(problems, "\n"))
			continue
		}
		head, rest, _ := strings.Cut(string(result.Text), "\n\n")
		if diff := cmp.Diff(c.want, rest); diff != "" || !strings.HasPrefix(head, "# Data sheets from the table t.csv.") {
			t.Errorf("%s (-want +got):\n%s\n%s", c.name, diff, head)
		}
		d := checkText(t, result.Text)
		parts := 0
		for _, kind := range d.Parts {
			parts += len(kind)
		}
		if parts != result.Parts || parts == 0 {
			t.Errorf("%s: %d parts are read, %d were told", c.name, parts, result.Parts)
		}
	}
}

// Everything that is not clear is refused, at its line and column.
func TestRefusals(t *testing.T) {
	panel := datasheet.Options{Part: "panel"}
	for _, c := range []struct {
		text string
		o    datasheet.Options
		want []string // beginnings
	}{
		{"", panel, []string{"t.csv:1:1: the table is empty"}},
		{"name,voc [V]\n", panel, []string{"t.csv:1:1: the table has headings and no row"}},
		{"name,voc [V]\nx,37.4\n", datasheet.Options{}, []string{`t.csv:1:1: what kind of part`}},
		{"voc [V]\n37.4\n", panel, []string{"t.csv:1:1: no column holds the parts' names"}},
		{"name,part\nx,panel\n", panel, []string{"t.csv:1:6: the kind of part is told twice"}},
		{"name,part\nx,pannel\n", datasheet.Options{}, []string{`t.csv:2:3: part: expected one of`}},
		{"name,vco [V]\nx,37.4\n", panel, []string{`t.csv:1:6: no part has an attribute "vco"; map the column to one, or to leave_out (did you mean "voc"?)`}},
		{"name,,voc [V]\nx,1,2\n", panel, []string{"t.csv:1:6: a column without a heading"}},
		{"name,voc [V],Voc (V)\nx,1,2\n", panel, []string{"t.csv:1:14: the heading \"Voc (V)\" says what the one at t.csv:1:6 says"}},
		{"name,voc [Volt]\nx,1\n", panel, []string{`t.csv:1:6: "Volt" is no unit`}},
		{"name,voc [A]\nx,1\n", panel, []string{"t.csv:1:6: voc is never in A"}},
		{"name,cells [V]\nx,1\n", panel, []string{"t.csv:1:6: cells is never in V"}},
		{"name,temp_voc\nx,-0.26\n", panel, []string{"t.csv:2:3: temp_voc: a number without a unit"}},
		{"name,temp_voc [%/K]\nx,-0.097 V/K\n", panel, []string{"t.csv:2:3: temp_voc: the cell is in V/K, its column in %/K"}},
		{"name,temp_voc [%/K]\nx,-0.26 %\n", panel, []string{"t.csv:2:3: temp_voc: the cell is in %, its column in %/K"}},
		{"name,voc [V],temp_voc [V/K]\nx,37.4,-2\n", panel, []string{"t.csv:2:8: temp_voc"}}, // held against voc
		{"name,voc [V]\nx,374\n", panel, []string{"t.csv:2:3: voc: expected more than 0 V, at most 200 V"}},
		{"name,voc [V]\nx,1e2\n", panel, []string{`t.csv:2:3: voc: "e2" is no unit`}},
		{"name,voc [V]\nx,0x25\n", panel, []string{`t.csv:2:3: voc: "x25" is no unit`}},
		{"name,voc [V]\nx,about 37\n", panel, []string{"t.csv:2:3: voc: expected a number"}},
		{"name,cells\nx,54.5\n", panel, []string{"t.csv:2:3: cells: expected a whole number"}},
		{"name,technology\nx,mono\n", panel, []string{`t.csv:2:3: technology: expected one of`}},
		{"name;voc [V]\nx;1,375\n", panel, []string{"t.csv:2:3: voc: \"1,375\": the comma may part thousands or decimals"}},
		{"name;voc [V];isc [A]\nx;37,4;13.95\n", panel, []string{"t.csv:2:3: voc: \"37,4\": a comma, and t.csv:2:8", "t.csv:2:8: isc: \"13.95\": a point, and t.csv:2:3"}},
		{"name;pmax [W]\nx;1.410,5\n", panel, []string{"t.csv:2:3: pmax: \"1.410,5\": marks between thousands"}},
		{"name;voc [V]\nx;37,4\n", datasheet.Options{Part: "panel", Decimals: datasheet.Point}, []string{"t.csv:2:3: voc: \"37,4\": a comma, where"}},
		{"name;voc [V]\nx;37.4\n", datasheet.Options{Part: "panel", Decimals: datasheet.Comma}, []string{"t.csv:2:3: voc: \"37.4\": a point, where"}},
		{"name,voc [V]\nx,37,4\n", panel, []string{"t.csv:2:6: the row has 3 cells, the headings are 2"}},
		{"name,voc [V]\nx\n", panel, []string{"t.csv:2:1: the row has 1 cells"}},
		{"name,voc [V]\nx,=1+1\n", panel, []string{"t.csv:2:3: voc: a formula of a spreadsheet"}},
		{"name,voc [V]\nx,#N/A\n", panel, []string{"t.csv:2:3: voc: a formula of a spreadsheet"}},
		{"name,voc [V]\n\"=cmd|' /C calc'!A0\",1\n", panel, []string{"t.csv:2:1: a formula of a spreadsheet"}},
		{"name,voc [V]\nSlate 410,1\nslate-410,2\n", panel, []string{`t.csv:2:1: panel "slate-410" is in the table twice, also at t.csv:3:1`, `t.csv:3:1: panel "slate-410" is in the table twice, also at t.csv:2:1`}},
		{"name,voc [V]\nGröße,x\n", panel, []string{"t.csv:2:1: 'ö' cannot stand in a label", "t.csv:2:7: voc: expected a number"}},
		{"name,voc [V]\n,1\n", panel, []string{"t.csv:2:1: the part has no name"}},
		{"name,voc [V]\n???,1\n", panel, []string{"t.csv:2:1: no label can be made"}},
		{"name,voc [V],peukert\nx,1,1.2\n", panel, []string{"t.csv:2:5: a panel has no attribute peukert"}},
		{"name,bank_voltages [V]\nx,\"12,24\"\n", datasheet.Options{Part: "controller"}, []string{"t.csv:2:3: bank_voltages: a comma in a list"}},
		{"name,isolated\nx,1\n", datasheet.Options{Part: "controller"}, []string{"t.csv:2:3: isolated: expected yes or no"}},
		{"name,connector\nx,\"a\nb\"\n", panel, []string{"t.csv:2:3: the cell goes over several lines"}},
		{"name,voc [V]\nx,\"37.4\ny,2\n", panel, []string{"t.csv:"}},
		{"name,voc [V]\nx,3\"7\n", panel, []string{"t.csv:2:4: the table cannot be parted into cells here"}},
		{"name,bms.charge_cutoff [A]\nx,1\n", panel, []string{"t.csv:1:6: bms.charge_cutoff is never in A"}},
		{"a,b;c\nx,1;2\n", panel, []string{"t.csv:1:1: what parts the columns is not clear"}},
		{"Typ,U\nx,1\n", datasheet.Options{Part: "panel", Columns: mapOf("column,attribute,unit\nTyp,name,\nUoc,voc,V\nU,volts,V\nU,voc,V\n")},
			[]string{`map.csv:3:1: the table has no column "Uoc"`, `map.csv:4:3: no part has an attribute "volts"`, `map.csv:5:1: the column "U" is mapped twice`}},
		{"Typ,U\nx,1\n", datasheet.Options{Part: "panel", Columns: mapOf("Typ,name,\n")}, []string{"map.csv:1:1: a map of columns begins with the headings"}},
		{"Typ,U\nx,1\n", datasheet.Options{Part: "panel", Columns: mapOf("column,attribute,unit\nTyp,name,V\nU,voc,W\n")}, []string{"map.csv:2:10: name has no unit", "map.csv:3:7: voc is never in W"}},
	} {
		result, problems := imported(c.text, c.o)
		for i, p := range problems {
			if i >= len(c.want) || !strings.HasPrefix(p, c.want[i]) {
				t.Errorf("%q: problem %d is %s\nwant %q", c.text, i+1, p, c.want)
			}
		}
		if len(problems) < len(c.want) || len(problems) == 0 {
			t.Errorf("%q: %d problems, want %d", c.text, len(problems), len(c.want))
		}
		if result.Text != nil {
			t.Errorf("%q: a text all the same:\n%s", c.text, result.Text)
		}
	}
}

// A bad row does not keep the others out of the text; what is kept is theirs alone.
func TestGoodRowsBesideBad(t *testing.T) {
	result, problems := imported("name,voc [V]\na,37.4\nb,=1\nc,36.9\n", datasheet.Options{Part: "panel"})
	if len(problems) != 1 || !result.Whole || result.Parts != 2 || result.Rows != 3 {
		t.Fatalf("%+v, %v", result, problems)
	}
	d := checkText(t, result.Text)
	if d.Find("panel", "a") == nil || d.Find("panel", "b") != nil || d.Find("panel", "c") == nil {
		t.Errorf("the parts are\n%s", result.Text)
	}
}

func TestHostileTables(t *testing.T) {
	utf16Text := []byte{0xFF, 0xFE}
	for _, unit := range utf16.Encode([]rune("name,voc [V]\nx,1\n")) {
		utf16Text = append(utf16Text, byte(unit), byte(unit>>8))
	}
	many := "name,voc [V]\n"
	for i := range 1001 {
		many += fmt.Sprintf("p%d,1\n", i)
	}
	for _, c := range []struct{ name, text, want string }{
		{"UTF-16", string(utf16Text), "t.csv:1:1: the file is UTF-16"},
		{"UTF-16 without a mark", string(utf16Text[2:]), "t.csv:1:"},
		{"NUL", "name,voc [V]\nx\x00,1\n", "t.csv:2:2: found U+0000"},
		{"an escape sequence", "name,voc [V]\n\x1b[2Jx,1\n", "t.csv:2:1: found U+001B"},
		{"a text that turns round", "name,voc [V]\na\u202eb,1\n", "t.csv:2:2: found U+202E"},
		{"Latin-1", "name,noct [\xb0C]\nx,1\n", "t.csv:1:12: the byte 0xB0 is not UTF-8"},
		{"a lone CR", "name,voc [V]\rx,1\r", "t.csv:1:13: a line ends with a carriage return (CR) alone"},
		{"a merge", "name,voc [V]\n<<<<<<< ours\nx,1\n", "t.csv:2:1: unresolved merge conflict"},
		{"too long", "name\n" + strings.Repeat("x\n", 200_000), "t.csv:1:1: the table has 400005 bytes"},
		{"too many rows", many, "t.csv:1002:1: the table has more than 1000 rows"},
		{"too many columns", strings.Repeat("name,", 300) + "\n", "t.csv:1:1: the row has 301 cells"},
		{"quotes alone", strings.Repeat(`"`, 10_001), "t.csv:1:"},
		{"one cell of everything", "name,voc [V]\n" + strings.Repeat("9", 200_000) + ",1\n", "t.csv:2:1: no label can be made"},
		{"many digits", "name,voc [V]\nx," + strings.Repeat("9", 200_000) + "\n", "t.csv:2:3: voc:"},
	} {
		result, problems := imported(c.text, datasheet.Options{Part: "panel"})
		if len(problems) == 0 || !strings.HasPrefix(problems[0], c.want) || result.Text != nil {
			t.Errorf("%s: %.300v; want %s", c.name, problems, c.want)
		}
		for _, p := range problems {
			if len(p) > 400 {
				t.Errorf("%s: a message of %d bytes", c.name, len(p))
			}
		}
		if len(problems) > source.MaxProblems {
			t.Errorf("%s: %d problems", c.name, len(problems))
		}
	}
}

// FuzzImport: no panic, every problem has a place, and whatever comes out is tidy
// and can be read, with no digit that the table has not.
func FuzzImport(f *testing.F) {
	for _, text := range []string{
		"name,voc [V],isc (A),note\nSlate 410,37.4,13.95,n\n", "name;voc [V]\nx;37,4\n", "part,name,bms.charge_cutoff [A]\nbattery,b,120\n",
		"\uFEFFname,connector\r\n\"a, \"\"b\"\"\",x\\\r\n", "name,size [AWG]\nstout,4/0\n", "name,bank_voltages\nx,12/24 V\n",
	} {
		f.Add(text, "panel")
		f.Add(text, "")
	}
	f.Fuzz(func(t *testing.T, text, part string) {
		result, problems := datasheet.Import(source.NewFile("t.csv", []byte(text)), datasheet.Options{Part: part})
		for _, p := range problems {
			if !p.At.Valid() || p.Message == "" {
				t.Errorf("a problem without a place: %+v", p)
			}
		}
		if result.Text != nil {
			checkText(t, result.Text)
		} else if len(problems) == 0 {
			t.Error("neither a text nor a problem")
		}
	})
}
