/*
 * One line of the working language. The tokens come from endfloat.working.LineReader, which also decides what
 * cannot be told from one token alone: FUNCTION is a name before a bracket, ARGUMENT a name before a colon inside
 * one, NOTE_OPEN the bracket of (k = 2) after ±, REMARK_OPEN that of (condition: "hot") in a limit. So every
 * decision below rests on the next token.
 */
parser grammar WorkingGrammar;

tokens {
  NUMBER, UNIT, NAME, FUNCTION, ARGUMENT, TEXT, UNITMARK,
  IF, THEN, ELSE, AND, OR, NOT, LIMIT, SOLVE, FOR, BETWEEN, AT, LEAST, MOST, CORRELATE,
  PLUS, MINUS, TIMES, OVER, POWER, PLUS_MINUS,
  LESS, AT_MOST, GREATER, AT_LEAST, EQUAL, UNEQUAL,
  OPEN, CLOSE, LIST_OPEN, LIST_CLOSE, NOTE_OPEN, REMARK_OPEN, COMMA, COLON, DOT, UP_TO
}

line: ( definition | limit | correlate ) EOF ;

lone: expression EOF ;

definition: NAME UNITMARK? EQUAL ( solve | expression spread? ) ;

spread: PLUS_MINUS sum ( NOTE_OPEN note ( COMMA note )* CLOSE )? ;

note: NAME EQUAL sum ;

limit: LIMIT place COLON bounds TEXT? ( REMARK_OPEN remark ( COMMA remark )* CLOSE )? ;

bounds: sum ( UP_TO | PLUS_MINUS ) sum
      | AT ( LEAST | MOST ) sum
      ;

remark: ARGUMENT COLON TEXT ;

correlate: CORRELATE NAME COMMA NAME COLON sum ;

solve: SOLVE equation ( COMMA equation )* FOR unknown ( COMMA unknown )* ;

equation: sum EQUAL sum ;

unknown: NAME BETWEEN sum AND sum ;

expression: IF or THEN expression ELSE expression
          | or
          ;

or: and ( OR and )* ;

and: not ( AND not )* ;

not: NOT not | comparison ;

comparison: sum ( comparator sum )* ;

comparator: LESS | AT_MOST | GREATER | AT_LEAST | EQUAL | UNEQUAL ;

sum: product ( ( PLUS | MINUS ) product )* ;

product: sign ( ( TIMES | OVER ) sign )* ;

sign: ( PLUS | MINUS ) sign | power ;

power: primary ( POWER exponent )? ;

exponent: ( PLUS | MINUS ) exponent | power ;

primary: NUMBER UNIT?
       | TEXT
       | call
       | place
       | LIST_OPEN ( expression ( COMMA expression )* )? LIST_CLOSE
       | OPEN expression CLOSE
       ;

call: FUNCTION OPEN ( argument ( COMMA argument )* )? CLOSE ( DOT NAME )* ;

argument: ( ARGUMENT COLON )? expression ;

place: NAME ( DOT NAME )* ;
