// The words of written patterns as data: what each one is, and what it costs to pass over it.
//
// A word may stand in several classes; the grammar asks for classes, never for words. What a class of talk
// costs says how sure it is that nothing is lost when it is passed over; every other word known here carries
// meaning, and passing over it is dear. Common practice throughout, no source; phrases are joined to one word.

export type LexicalClass =
  // Words of any sentence that change nothing.
  | "filler"
  | "colour"
  | "yarn"
  | "handling"
  | "chat"
  // Which of several.
  | "next"
  | "same"
  | "each"
  | "alternate"
  | "first"
  | "last"
  | "any"
  | "rest"
  | "that"
  | "start"
  | "joining"
  | "made"
  | "unworked"
  | "previous"
  // Links.
  | "in"
  | "of"
  | "to"
  | "around"
  | "between"
  | "until"
  | "with"
  | "and"
  | "not"
  | "together"
  // Nouns.
  | "stitch"
  | "chain"
  | "space"
  | "group"
  | "corner"
  | "ring"
  | "picot"
  | "side"
  | "gap"
  | "place"
  | "round"
  | "hook"
  | "loop-part"
  | "post"
  | "centre"
  | "top"
  | "base"
  | "dip"
  | "tip"
  | "size"
  // Doing.
  | "work"
  | "skip"
  | "join"
  | "repeat"
  | "turn"
  | "fasten"
  | "increase"
  | "decrease"
  | "even"
  | "evenly"
  | "end"
  | "omit"
  | "counts"
  | "drawn-ring"
  | "bought-ring"
  | "back-loop"
  | "front-loop"
  | "third-loop"
  | "adjective"
  | "times"
  | "more"
  | "once"
  | "half"
  | "below"
  | "forms"
  | "behind"
  | "front"
  | "says-total"
  | "soft"

export interface LexiconEntry {
  readonly class: LexicalClass
  /** Words and phrases, parted by bars. */
  readonly words: string
}

/** Cost of passing over one word of a class. */
export const skipCosts: Readonly<Partial<Record<LexicalClass, number>>> = {
  filler: 0,
  colour: 0.05,
  yarn: 0.1,
  handling: 0.1,
  chat: 0.15,
  fasten: 0.1,
  "says-total": 0.4,
  work: 0.1,
  more: 0.4,
  round: 0.4,
  made: 0.3,
  side: 0.6,
  adjective: 0.1,
  with: 0.35,
  and: 0.02,
  forms: 0.2,
  start: 0.5,
  soft: 0.5,
  not: 1.5,
  that: 0.3,
  evenly: 0.6,
  hook: 0.4,
  even: 0.8,
  place: 0.5,
  front: 0.6,
  behind: 0.8,
  size: 0.5,
  end: 0.7,
  rest: 0.8,
}

/** Cost of passing over a word no class holds, and over one that carries meaning. */
export const unknownWordCost = 1.2
export const meaningfulWordCost = 2

export const lexicon: readonly LexiconEntry[] = [
  {
    class: "filler",
    words:
      "the|a|an|your|my|our|then|now|just|simply|please|also|very|own|its|it's|carefully|another|exactly",
  },
  {
    class: "colour",
    words:
      "red|blue|green|yellow|white|black|grey|gray|pink|purple|violet|orange|brown|cream|beige|teal|navy|lilac|turquoise|gold|silver|dark|light|drab|ecru|natural|ivory|mauve|rose|peach|mint|coral|lavender|aqua|burgundy|maroon|charcoal|tan|rust|mustard|sage|olive|lime|magenta|fuchsia|scarlet|crimson|lemon|plum|wine|bright|pale|variegated|mc|cc|cc1|cc2|cc3|colour a|colour b|colour c|colour d|color a|color b|color c|color d|main colour|main color|contrast|contrasting",
  },
  {
    class: "yarn",
    words:
      "yarn|thread|wool|cotton|colour|color|colours|colors|ball|skein|strand|tail|end of yarn|shade",
  },
  {
    class: "handling",
    words:
      "marker|markers|stitch marker|tighten|tightly|gently|firmly|loosely|tight|loose|slip knot|slipknot|pull|close|closed|hole|change|changing|switch|switching|drop|pick up|carry|attach marker|place marker|pm|weave in|weave|weaving|ends|hide|sew in|darn in|block|press|iron|steam|stuff|stuffing|scissors|needle|tapestry needle|clip|trim|snip|move|moving|insert hook|draw up|draw through|tug|sideways|flatten|fold|bend|push|new|rs|ws|right side|wrong side|facing|right side facing|wrong side facing|with right side facing|rs facing|invisible|invisibly|fiberfill|mark|marking|marked|moving up|moved up|slipknot on hook|holding|hold|bending|folding|forward|forwards|out of way|towards you|toward you|away from you",
  },
  {
    class: "chat",
    words:
      "anywhere|and so on|and so forth|carry on|keep going|go on|you|you'll|you're|we|i|i'm|will|should|would|can|may|might|must|need|needs|needed|want|if|when|while|as|so|but|because|since|like|this|these|those|there|here|is|are|be|been|was|were|do|does|did|have|has|had|get|gets|got|see|look|looks|note|remember|sure|now and then|again|well|good|great|easy|easily|nice|really|still|even though|example|photo|picture|pic|image|above|know|let's|let|go|going|come|comes|keep|keeping|time|way|all set|done|ready|finished|complete|completed|finally|begins|start again|always|usually|never|too|off|out|on hook|or so|at one time|at once|all at once|at same time|etc|it|they|them|their|that's|which|what|how|where|who|thing|things|part|parts|piece|work in progress|motif|square|flower|circle shape|project|design|instructions|directions|following instructions|follows|thus|via|video|tutorial|steps|hand|hands|please note|hint|tip:|voila|yay|congratulations|about|approximately|approx|roughly|from here|at this point|complete round with|completing round with|finish round with|to begin round|to begin rnd|to begin row|to start round|to start rnd|to start row|optional|optionally|by|for|because of|due|within this|throughout|through out|ok|okay|whole|entire|entirely|usual|usually|same way|same manner|in this way|this way|in this manner|following|first of all|actually|little|bit|nicely|neat|neatly|flat|lie flat|lay flat|shape|finish|finishing|finishes|continue|continuing|cont|continues|proceed|start with|normal|normally|regular way|into shape|in pattern|as established|as before|altogether|to correspond|ending to correspond|ends to correspond|as given|for corner|for joining|as desired|if desired",
  },
  {
    class: "says-total",
    words:
      "you should end up with|end up with|you end up with|you will end up with|you'll end up with|this gives you|that gives you|should leave you with",
  },
  {
    class: "chat",
    words:
      "back down|back up|work your way around|work your way round|working your way around|make your way around|start by|begin by|makes a petal|makes one petal|makes petal|creates a petal|creates petal|makes a shell|makes one shell|makes a corner|creates a corner|continue around with|continuing around with|go around with|work around with",
  },
  { class: "next", words: "next|nxt|nx|following|foll|subsequent|succeeding" },
  { class: "same", words: "same|very same|that same|this same" },
  {
    class: "each",
    words:
      "each|ea|every|all|both|each of|every one of|each and every|every single|any and all|each one",
  },
  { class: "alternate", words: "other|alternate|alt|second" },
  { class: "first", words: "first|1st" },
  { class: "last", words: "last|final|previous made|ending" },
  { class: "any", words: "any|one|some|any of|any one" },
  { class: "rest", words: "remaining|rem|rest|remainder|rest of|leftover|others|other ones" },
  { class: "that", words: "that|this|these|those" },
  {
    class: "start",
    words:
      "beg|beginning|starting|begin|initial|original|turning|start|commencing|opening|commencement|begin-",
  },
  { class: "joining", words: "joining|joined|join|closing|slip-stitched" },
  {
    class: "made",
    words:
      "made|worked|completed|just made|just worked|just completed|formed|used|you just made|you made|just formed|just crocheted|last made|last worked",
  },
  {
    class: "unworked",
    words: "skipped|unworked|unused|free|missed|empty|left unworked|not worked",
  },
  { class: "previous", words: "previous|prev|preceding|prior|last" },
  {
    class: "in",
    words:
      "in|into|on|onto|inside|at|within|in to|on to|working in|working into|worked in|worked into|work in|upon|when you reach|when you get to|when you come to|once you reach|once you get to|as you reach|upon reaching|when reaching|back in|back into|back onto",
  },
  { class: "of", words: "of|from" },
  { class: "to", words: "to" },
  {
    class: "around",
    words:
      "around|round|arnd|ard|across|all around|all way around|all round|across entire round|around entire|along|along each side|all across|over|through|thru|under|rnd about|circle around|way around|whole way around|all the way round|over to",
  },
  { class: "between", words: "between|betw|btw|btwn|in between|inbetween" },
  { class: "until", words: "to|until|till|up to|up until|til|reaching|ending at|to reach" },
  { class: "with", words: "with|w|using|by means of" },
  { class: "and", words: "and|&|plus|+|followed by|along with|as well as|n" },
  {
    class: "not",
    words:
      "not|don't|doesn't|won't|no|never|without|isn't|do not|does not|will not|should not|is not|are not|cannot",
  },
  { class: "together", words: "together|tog" },
  {
    class: "stitch",
    words: "st|sts|stitch|stitches|stich|stiches|sttch|sths|stitces|stitchs|st's|stitche",
  },
  {
    class: "chain",
    words:
      "ch|chs|chain|chains|chain stitch|chain stitches|chain st|ch st|ch sts|ch's|chn|chain sts|chaining|ch up|chain up",
  },
  {
    class: "space",
    words:
      "sp|sps|space|spaces|lp|lps|loop|loops|arch|arches|arc|arcs|hole|holes|gap|gaps|bar|bars|eyelet|eyelets|spc|spcs|mesh|meshes|window|windows|opening space|arcade|bridge|spac|chsp|chsps|sp's|sp.",
  },
  {
    class: "group",
    words:
      "group|groups|grp|grps|gp|gps|petal|petals|scallop|scallops|shell|shells|fan|fans|set|sets|lots|lot|leaf|leaves|v|v-st|vst|v-stitch|v-stitches|point|points|pair|pairs|bunch|bunches|side|sides|spoke|spokes|block|blocks|blk|triangle|triangles|granny|bundle|trio|trefoil|trefoils|ray|rays|star point|star points|wedge|section|sections|3dc group",
  },
  { class: "corner", words: "corner|corners|cnr|crn|cnrs|corner group|corner point|corner points" },
  {
    class: "ring",
    words:
      "circular chain|chain circle|round chain|key ring|keyring|jump ring|hoop|earring hoop|bangle|hair tie|hair elastic|jar ring|ring|rings|circle|mr|mc|magic ring|magic circle|magic loop|magic rings|adjustable ring|adjustable loop|sliding loop|sliding ring|slip ring|slip loop|center of ring|centre of ring|middle of ring|chain ring|ch ring|ch-ring|starting ring|foundation ring|magic cirlce|magical circle|magical ring|starter ring|double magic ring|initial ring|center ring|centre ring|beginning ring|magic knot|center circle|starting circle|ring center|ring centre|center loop|starting loop|beginning loop|loop ring|foundation circle|center of circle|centre of circle",
  },
  {
    class: "drawn-ring",
    words:
      "mr|mc|magic ring|magic circle|magic loop|magic rings|adjustable ring|adjustable loop|sliding loop|sliding ring|slip ring|slip loop|magic cirlce|magical circle|magical ring|double magic ring|magic knot",
  },
  { class: "bought-ring", words: "plastic|bone|metal|wooden|curtain|solid|brass|cabone" },
  { class: "picot", words: "picot|picots|p|picot loop|picot loops|picot stitch" },
  { class: "side", words: "side|sides|edge|edges" },
  { class: "gap", words: "gap|gaps|space" },
  { class: "place", words: "place|spot|one|ones|point of join|location|area|stitch place" },
  { class: "round", words: "round|rounds|rnd|rnds|rd|rds|row|rows|r|circuit|round below|tier" },
  { class: "hook", words: "hook|crochet hook" },
  { class: "loop-part", words: "loop|loops|lp|lps|bar|strand|half|thread" },
  { class: "post", words: "post|posts|stem|stalk" },
  { class: "centre", words: "center|centre|middle|central|ctr|mid|centermost|middle one" },
  { class: "top", words: "top|tops|head" },
  { class: "base", words: "base|bottom|foot" },
  { class: "dip", words: "dip|dips|hollow|hollows|valley|valleys" },
  { class: "tip", words: "tip|tips|peak|peaks|apex" },
  { class: "size", words: "small|large|big|smaller|larger|bigger|short|long|little" },
  {
    class: "work",
    words:
      "continue to work|continue to make|continue to crochet|work|works|make|makes|do|crochet|place|put|add|create|making|working|doing|placing|adding|putting|crocheting|work as follows|made up of|using|stitch up|perform|do this|complete the following|work following",
  },
  {
    class: "skip",
    words:
      "skip|skips|sk|miss|seek|skipping|missing|skp|omit|pass over|skip over|passing over|leave out|jump|jump over|misses|skippping|miss out|s k|missed out",
  },
  {
    class: "join",
    words:
      "join|joining|attach|rejoin|connect|unite|insert color|insert colour|insert yarn|insert new color|insert new colour|insert new yarn|fasten on|reattach|tie in|link|joins|start new yarn|attaching",
  },
  {
    class: "repeat",
    words: "rep|repeat|repeats|rpt|reps|repeating|repeated|re-peat|rept|reapeat|repet",
  },
  {
    class: "turn",
    words:
      "turn|turn work|turn your work|ch and turn|turn over|turn work over|turn your work over|flip work|flip your work|flip work over|turn piece|turn piece over",
  },
  {
    class: "fasten",
    words:
      "fasten off|finish off|break off|cut yarn|break yarn|fo|end off|tie off|break thread|cut thread|cut|break|fasten|tie|knot off|bind off|bo|cast off|f o|fasten yarn|finish",
  },
  { class: "increase", words: "inc|incs|increase|increases|increasing" },
  {
    class: "decrease",
    words:
      "inv dec|inv decrease|invisible dec|invisible decrease|dec|decs|decrease|decreases|decreasing|invdec",
  },
  { class: "even", words: "even" },
  {
    class: "evenly",
    words:
      "evenly|equally|evenly spaced|evenly spread|evenly around|spread evenly|spaced evenly|evenly distributed",
  },
  { class: "end", words: "except|ending|end|ends|finishing|finish|ended" },
  { class: "omit", words: "omitting|omit|leaving out|leave|leaving|skipping" },
  {
    class: "counts",
    words:
      "count|counts|counted|counting|considered|stands|stand|represents|represent|replaces|replace|equals|acts|serves|forms|is|are|=|equal|standing|instead|substitutes|regarded|serving|becomes|makes|equivalent|equivalent to|equivalent of",
  },
  {
    class: "back-loop",
    words:
      "blo|bl|back loop|back loops|back loop only|back loops only|back lp|back lps|rear loop|rear loops|back lp only|back lps only|back loops of|back half|back strand|back thread|back bar|blp|tbl",
  },
  {
    class: "front-loop",
    words:
      "flo|fl|front loop|front loops|front loop only|front loops only|front lp|front lps|front lp only|front lps only|front half|front strand|flp|tfl",
  },
  {
    class: "third-loop",
    words: "third loop|3rd loop|third loops|3rd loops|third loop only|back bar",
  },
  {
    class: "adjective",
    words:
      "standing|regular|surface|additional|plain|loose|full|reverse|spike|linked|elongated|basic|simple|normal|raised|real|actual|usual|completed|complete|lone|solitary|consecutive|adjacent|individual|special|whole",
  },
  { class: "times", words: "times|time|x|xs|repeats|reps|repetitions" },
  { class: "more", words: "more|additional|further|extra|again|other times" },
  {
    class: "once",
    words: "once|twice|thrice|one time|one more time|once more|twice more|two times|three times",
  },
  { class: "half", words: "half" },
  { class: "below", words: "below|underneath|beneath|down" },
  { class: "forms", words: "form|forming|make|create|forms|creating|close|making" },
  { class: "behind", words: "behind|back of|at back of|in back of" },
  {
    class: "front",
    words:
      "in front of|front of|over front of|working in front of|work in front of|worked in front of",
  },
  {
    class: "says-total",
    words:
      "total|totals|totaling|totalling|you should have|you will have|you now have|you have|you'll have|should have|gives|giving|there are|there will be|there should be|resulting in|for total of|for a total of|making total of|total of|you should now have|stitch count|count should be|st count|makes|will have|making|in total|result",
  },
  {
    class: "soft",
    words:
      "if|about|or|between|approx|approximately|roughly|then|than|less|over|needs|divide|per|not|nearly|almost",
  },
]

/** Words that only stand in phrases of the grammar: of no class, and yet no strangers. */
export const phraseWords: ReadonlySet<string> = new Set(
  "separated|parted|divided|after|apart|arms|chained|replaced|before|began|begun|being|bracket|brackets|came|cm|commenced|commences|cord|crab|decreased|desired|diameter|distributed|drawn|dropped|enough|established|fashion|fewer|fill|filling|follow|grams|having|hexagon|inch|inches|incl|include|included|including|inclusive|increased|insert|inv|lay|left|leg|legs|lie|manner|measures|measuring|minutes|mm|necessary|occasionally|often|only|opposite|parentheses|pass|pattern|pivot|placed|pointed|rather|reach|remain|remains|remove|repetition|required|reversed|right|rotate|rotating|sequence|spaced|spikes|spread|started|stated|stay|step|stopping|take|tapering|three|tooth|trb|turns|twisted|two|underside|up|use|wherever|wide|withdraw|wrap|yards|yds|yo|you've|yrh|hit".split(
    "|",
  ),
)
