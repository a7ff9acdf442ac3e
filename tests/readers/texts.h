// Small STEP texts written by hand for the tests of the reader, with a place to plant a fault.
#pragma once

#include <stdexcept>
#include <string>

namespace visewright::readers_tests {

/// The text between head and tail of a file.
[[nodiscard]] inline std::string file_of(const std::string& data) {
  return "ISO-10303-21;\nHEADER;\nFILE_DESCRIPTION(('a box'),'2;1');\n"
         "FILE_NAME('box.step','2024-05-01T00:00:00',(''),(''),'','','');\n"
         "FILE_SCHEMA(('AUTOMOTIVE_DESIGN { 1 0 10303 214 1 1 1 1 }'));\nENDSEC;\nDATA;\n" +
         data + "ENDSEC;\nEND-ISO-10303-21;\n";
}

/// The text with its only `from` replaced.
[[nodiscard]] inline std::string with(std::string text, const std::string& from, const std::string& to) {
  const std::size_t at = text.find(from);
  if (at == std::string::npos || text.find(from, at + 1) != std::string::npos)
    throw std::runtime_error("the text does not hold exactly one " + from);
  return text.replace(at, from.size(), to);
}

/// A wedge 2 × 3 × 4: corners (0,0,0), (2,0,0), (0,3,0) and the same at z = 4. Five faces, nine edges, six corners.
[[nodiscard]] inline std::string wedge() {
  return file_of(R"(#1=CARTESIAN_POINT('',(0.,0.,0.));
#2=CARTESIAN_POINT('',(2.,0.,0.));
#3=CARTESIAN_POINT('',(0.,3.,0.));
#4=CARTESIAN_POINT('',(0.,0.,4.));
#5=CARTESIAN_POINT('',(2.,0.,4.));
#6=CARTESIAN_POINT('',(0.,3.,4.));
#11=VERTEX_POINT('',#1); #12=VERTEX_POINT('',#2); #13=VERTEX_POINT('',#3);
#14=VERTEX_POINT('',#4); #15=VERTEX_POINT('',#5); #16=VERTEX_POINT('',#6);
#21=DIRECTION('',(1.,0.,0.)); #22=DIRECTION('',(0.,1.,0.)); #23=DIRECTION('',(0.,0.,1.));
#24=DIRECTION('',(-0.55470019622522912,0.83205029433784372,0.));
#25=DIRECTION('',(0.83205029433784372,0.55470019622522912,0.));
#31=VECTOR('',#21,1.); #32=VECTOR('',#22,1.); #33=VECTOR('',#23,1.); #34=VECTOR('',#24,1.);
#41=LINE('',#1,#31); #42=LINE('',#2,#34); #43=LINE('',#1,#32);
#44=LINE('',#4,#31); #45=LINE('',#5,#34); #46=LINE('',#4,#32);
#47=LINE('',#1,#33); #48=LINE('',#2,#33); #49=LINE('',#3,#33);
#51=EDGE_CURVE('',#11,#12,#41,.T.); #52=EDGE_CURVE('',#12,#13,#42,.T.); #53=EDGE_CURVE('',#11,#13,#43,.T.);
#54=EDGE_CURVE('',#14,#15,#44,.T.); #55=EDGE_CURVE('',#15,#16,#45,.T.); #56=EDGE_CURVE('',#14,#16,#46,.T.);
#57=EDGE_CURVE('',#11,#14,#47,.T.); #58=EDGE_CURVE('',#12,#15,#48,.T.); #59=EDGE_CURVE('',#13,#16,#49,.T.);
/* floor, seen from below */
#60=AXIS2_PLACEMENT_3D('',#1,#23,#21); #61=PLANE('',#60);
#62=ORIENTED_EDGE('',*,*,#53,.T.); #63=ORIENTED_EDGE('',*,*,#52,.F.); #64=ORIENTED_EDGE('',*,*,#51,.F.);
#65=EDGE_LOOP('',(#62,#63,#64)); #66=FACE_OUTER_BOUND('',#65,.T.); #67=ADVANCED_FACE('',(#66),#61,.F.);
/* lid */
#70=AXIS2_PLACEMENT_3D('',#4,#23,#21); #71=PLANE('',#70);
#72=ORIENTED_EDGE('',*,*,#54,.T.); #73=ORIENTED_EDGE('',*,*,#55,.T.); #74=ORIENTED_EDGE('',*,*,#56,.F.);
#75=EDGE_LOOP('',(#72,#73,#74)); #76=FACE_OUTER_BOUND('',#75,.T.); #77=ADVANCED_FACE('',(#76),#71,.T.);
/* front, y = 0: its loop is written backwards and turned by its bound */
#80=AXIS2_PLACEMENT_3D('',#1,#22,#21); #81=PLANE('',#80);
#82=ORIENTED_EDGE('',*,*,#57,.T.); #83=ORIENTED_EDGE('',*,*,#54,.T.); #84=ORIENTED_EDGE('',*,*,#58,.F.);
#85=ORIENTED_EDGE('',*,*,#51,.F.);
#86=EDGE_LOOP('',(#82,#83,#84,#85)); #87=FACE_BOUND('',#86,.F.); #88=ADVANCED_FACE('',(#87),#81,.F.);
/* left, x = 0 */
#90=AXIS2_PLACEMENT_3D('',#1,#21,#22); #91=PLANE('',#90);
#92=ORIENTED_EDGE('',*,*,#57,.T.); #93=ORIENTED_EDGE('',*,*,#56,.T.); #94=ORIENTED_EDGE('',*,*,#59,.F.);
#95=ORIENTED_EDGE('',*,*,#53,.F.);
#96=EDGE_LOOP('',(#92,#93,#94,#95)); #97=FACE_BOUND('',#96,.T.); #98=ADVANCED_FACE('',(#97),#91,.F.);
/* slope */
#100=AXIS2_PLACEMENT_3D('',#2,#25,#23); #101=PLANE('',#100);
#102=ORIENTED_EDGE('',*,*,#52,.T.); #103=ORIENTED_EDGE('',*,*,#59,.T.); #104=ORIENTED_EDGE('',*,*,#55,.F.);
#105=ORIENTED_EDGE('',*,*,#58,.F.);
#106=EDGE_LOOP('',(#102,#103,#104,#105)); #107=FACE_BOUND('',#106,.T.); #108=ADVANCED_FACE('',(#107),#101,.T.);
#110=CLOSED_SHELL('',(#67,#77,#88,#98,#108));
#111=MANIFOLD_SOLID_BREP('wedge',#110);
)");
}

/// Two uses of one product: `inner` stands at (10, 0, 0) in `outer`, turned a quarter about z, and once untouched.
[[nodiscard]] inline std::string nest() {
  return file_of(R"(#1=APPLICATION_CONTEXT('');
#2=PRODUCT('1','outer','',(#3)); #3=PRODUCT_CONTEXT('',#1,'mechanical');
#4=PRODUCT_DEFINITION_FORMATION('','',#2); #5=PRODUCT_DEFINITION_CONTEXT('part definition',#1,'design');
#6=PRODUCT_DEFINITION('design','',#4,#5); #7=PRODUCT_DEFINITION_SHAPE('','',#6);
#8=SHAPE_DEFINITION_REPRESENTATION(#7,#9); #9=SHAPE_REPRESENTATION('',(#20,#24),#30);
#12=PRODUCT('2','inner','',(#3)); #14=PRODUCT_DEFINITION_FORMATION('','',#12);
#16=PRODUCT_DEFINITION('design','',#14,#5); #17=PRODUCT_DEFINITION_SHAPE('','',#16);
#18=SHAPE_DEFINITION_REPRESENTATION(#17,#19); #19=SHAPE_REPRESENTATION('',(#20),#30);
#20=AXIS2_PLACEMENT_3D('',#21,#22,#23); #21=CARTESIAN_POINT('',(0.,0.,0.)); #22=DIRECTION('',(0.,0.,1.));
#23=DIRECTION('',(1.,0.,0.)); #24=AXIS2_PLACEMENT_3D('',#25,#22,#26); #25=CARTESIAN_POINT('',(10.,0.,0.));
#26=DIRECTION('',(0.,1.,0.));
#30=(GEOMETRIC_REPRESENTATION_CONTEXT(3) GLOBAL_UNIT_ASSIGNED_CONTEXT((#31,#32,#33)) REPRESENTATION_CONTEXT('',''));
#31=(LENGTH_UNIT() NAMED_UNIT(*) SI_UNIT(.MILLI.,.METRE.));
#32=(NAMED_UNIT(*) PLANE_ANGLE_UNIT() SI_UNIT($,.RADIAN.));
#33=(NAMED_UNIT(*) SI_UNIT($,.STERADIAN.) SOLID_ANGLE_UNIT());
#40=NEXT_ASSEMBLY_USAGE_OCCURRENCE('1','turned','',#6,#16,$); #41=PRODUCT_DEFINITION_SHAPE('','',#40);
#42=ITEM_DEFINED_TRANSFORMATION('','',#20,#24);
#43=(REPRESENTATION_RELATIONSHIP('','',#19,#9) REPRESENTATION_RELATIONSHIP_WITH_TRANSFORMATION(#42)
  SHAPE_REPRESENTATION_RELATIONSHIP());
#44=CONTEXT_DEPENDENT_SHAPE_REPRESENTATION(#43,#41);
#50=NEXT_ASSEMBLY_USAGE_OCCURRENCE('2','as is','',#6,#16,$); #51=PRODUCT_DEFINITION_SHAPE('','',#50);
#52=ITEM_DEFINED_TRANSFORMATION('','',#20,#20);
#53=(REPRESENTATION_RELATIONSHIP('','',#9,#19) REPRESENTATION_RELATIONSHIP_WITH_TRANSFORMATION(#52)
  SHAPE_REPRESENTATION_RELATIONSHIP());
#54=CONTEXT_DEPENDENT_SHAPE_REPRESENTATION(#53,#51);
)");
}

}  // namespace visewright::readers_tests
