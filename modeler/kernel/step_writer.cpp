#include "kernel/step_writer.h"

#include <APIHeaderSection_MakeHeader.hxx>
#include <BRepBuilderAPI_Transform.hxx>
#include <IFSelect_ReturnStatus.hxx>
#include <Interface_HArray1OfHAsciiString.hxx>
#include <Interface_Static.hxx>
#include <Quantity_Color.hxx>
#include <STEPCAFControl_Controller.hxx>
#include <STEPCAFControl_Writer.hxx>
#include <STEPConstruct.hxx>
#include <STEPConstruct_Styles.hxx>
#include <StepBasic_DerivedUnitElement.hxx>
#include <StepBasic_Product.hxx>
#include <StepBasic_ProductDefinition.hxx>
#include <StepBasic_ProductDefinitionFormation.hxx>
#include <StepBasic_SiUnitAndLengthUnit.hxx>
#include <StepBasic_SiUnitAndMassUnit.hxx>
#include <StepData_Protocol.hxx>
#include <StepData_StepModel.hxx>
#include <StepData_StepWriter.hxx>
#include <StepRepr_NextAssemblyUsageOccurrence.hxx>
#include <StepVisual_Colour.hxx>
#include <StepVisual_MechanicalDesignGeometricPresentationRepresentation.hxx>
#include <StepVisual_PresentationStyleAssignment.hxx>
#include <StepVisual_StyledItem.hxx>
#include <TCollection_HAsciiString.hxx>
#include <TDF_Label.hxx>
#include <TDataStd_Name.hxx>
#include <TDocStd_Document.hxx>
#include <TopExp_Explorer.hxx>
#include <Transfer_FinderProcess.hxx>
#include <XCAFDoc_Area.hxx>
#include <XCAFDoc_DocumentTool.hxx>
#include <XCAFDoc_MaterialTool.hxx>
#include <XCAFDoc_ShapeTool.hxx>
#include <XCAFDoc_Volume.hxx>
#include <XSControl_TransferWriter.hxx>
#include <XSControl_WorkSession.hxx>
#include <map>
#include <mutex>
#include <sstream>
#include <stdexcept>

#include "kernel/boundary.h"
#include "kernel/frames.h"
#include "kernel/solid_impl.h"
#include "kernel/step_text.h"

namespace visewright::kernel {
namespace {

Handle(TCollection_HAsciiString) text(const std::string& s) { return new TCollection_HAsciiString(s.c_str()); }

/// Settings of the kernel's exchange, which are global: set, checked, and put back at the end.
class Settings {
 public:
  explicit Settings(Schema schema) {
    set("write.step.schema", schema == Schema::ap214 ? "AP214IS" : "AP242DIS");
    set("write.step.unit", "MM");
    set("write.surfacecurve.mode", "On");
    set("write.precision.mode", "Average");
  }
  Settings(const Settings&) = delete;
  Settings& operator=(const Settings&) = delete;
  ~Settings() {
    for (const auto& [name, value] : before_) Interface_Static::SetCVal(name, value.c_str());
  }

 private:
  void set(const char* name, const char* value) {
    const char* before = Interface_Static::CVal(name);
    if (before == nullptr || !Interface_Static::IsPresent(name))
      throw std::runtime_error(std::string("the setting ") + name + " is not known");
    before_.emplace_back(name, before);
    if (!Interface_Static::SetCVal(name, value))
      throw std::runtime_error(std::string("the setting ") + name + " was not taken");
  }
  std::vector<std::pair<const char*, std::string>> before_;
};

/// A shape of its own for each product: the kernel would make one product of two that share a shape.
TopoDS_Shape unshared(const Solid& body) {
  const TopoDS_Shape& shape = shape_of(body);
  if (shape.Location().IsIdentity()) return own_copy(shape);
  const gp_Trsf motion = shape.Location().Transformation();
  return BRepBuilderAPI_Transform(shape.Located(TopLoc_Location()), motion, Standard_True).Shape();
}

/// One writing of one document.
class Writing {
 public:
  Writing(const StepDocument& document, Schema schema) : document_(document), schema_(schema), settings_(schema) {}

  std::string file() {
    build();
    STEPCAFControl_Writer writer;
    writer.SetColorMode(Standard_False);  // its order follows memory addresses; colours follow below in ours
    writer.SetNameMode(Standard_True);
    writer.SetMaterialMode(Standard_True);
    writer.SetPropsMode(Standard_True);
    if (!writer.Transfer(tree_, STEPControl_AsIs)) throw std::runtime_error("the products were not taken over");
    session_ = writer.ChangeWriter().WS();
    model_ = writer.ChangeWriter().Model();
    name_products();
    number_uses();
    correct_densities();
    colour_products();
    fill_header();
    return print();
  }

 private:
  void build() {
    tree_ = new TDocStd_Document("MDTV-XCAF");
    const Handle(XCAFDoc_ShapeTool) shapes = XCAFDoc_DocumentTool::ShapeTool(tree_->Main());
    const Handle(XCAFDoc_MaterialTool) materials = XCAFDoc_DocumentTool::MaterialTool(tree_->Main());
    std::map<std::string, std::string> material_stand_in;
    for (const StepDocument::Product& product : document_.products()) {
      shapes_.push_back(product.body ? unshared(*product.body) : TopoDS_Shape());
      const TDF_Label label = product.body ? shapes->AddShape(shapes_.back(), Standard_False) : shapes->NewShape();
      labels_.push_back(label);
      names_.push_back(texts_.stand_in(product.name));
      TDataStd_Name::Set(label, names_.back().c_str());
      if (product.measured) {
        XCAFDoc_Volume::Set(label, product.measured->volume_mm3);
        XCAFDoc_Area::Set(label, product.measured->area_mm2);
      }
      if (product.material.empty()) continue;
      auto& stand_in = material_stand_in[product.material];
      if (stand_in.empty()) stand_in = texts_.stand_in(product.material);
      materials->SetMaterial(label, text(stand_in), text(stand_in), product.density_g_cm3, text("density measure"),
                             text("POSITIVE_RATIO_MEASURE"));
    }
    for (const StepDocument::Use& use : document_.uses()) {
      const TDF_Label label =
          shapes->AddComponent(labels_[use.parent], labels_[use.child], TopLoc_Location(motion_to(use.where)));
      if (label.IsNull()) throw std::runtime_error("a product was not placed");
      use_names_.push_back(texts_.stand_in(use.name));
      TDataStd_Name::Set(label, use_names_.back().c_str());
    }
    shapes->UpdateAssemblies();
  }

  /// The kernel gives a product one text as id and name; the id becomes the item.
  void name_products() {
    std::map<std::string, std::size_t> by_name;
    for (std::size_t i = 0; i < names_.size(); ++i) by_name[names_[i]] = i;
    for (Standard_Integer i = 1; i <= model_->NbEntities(); ++i) {
      const auto product = Handle(StepBasic_Product)::DownCast(model_->Value(i));
      if (product.IsNull()) continue;
      const std::size_t index = by_name.at(product->Name()->ToCString());
      product->SetId(text(texts_.stand_in(document_.products()[index].item)));
    }
  }

  /// Numbers of uses count up for the life of the process; here they start at 1 in every file.
  void number_uses() {
    std::size_t number = 0;
    for (Standard_Integer i = 1; i <= model_->NbEntities(); ++i) {
      const auto use = Handle(StepRepr_NextAssemblyUsageOccurrence)::DownCast(model_->Value(i));
      if (!use.IsNull()) use->SetId(text(std::to_string(++number)));
    }
    if (number != document_.uses().size()) throw std::runtime_error("not every use of a product was taken over");
  }

  /// The kernel writes the unit of a density as g³·cm²; grams for each cubic centimetre are g¹·cm⁻³.
  void correct_densities() {
    for (Standard_Integer i = 1; i <= model_->NbEntities(); ++i) {
      const auto element = Handle(StepBasic_DerivedUnitElement)::DownCast(model_->Value(i));
      if (element.IsNull()) continue;
      const Handle(StepBasic_NamedUnit) unit = element->Unit();
      if (unit->IsKind(STANDARD_TYPE(StepBasic_SiUnitAndMassUnit))) element->SetExponent(1);
      // Volumes and areas are measured in millimetres, so centimetres stand in densities alone.
      const auto length = Handle(StepBasic_SiUnitAndLengthUnit)::DownCast(unit);
      if (!length.IsNull() && length->HasPrefix() && length->Prefix() == StepBasic_spCenti) element->SetExponent(-3);
    }
  }

  void colour_products() {
    STEPConstruct_Styles styles(session_);
    const Handle(Transfer_FinderProcess) finder = session_->TransferWriter()->FinderProcess();
    std::map<Colour, Handle(StepVisual_Colour)> colours;
    for (std::size_t i = 0; i < shapes_.size(); ++i) {
      if (shapes_[i].IsNull()) continue;
      const Colour& c = document_.products()[i].colour;
      Handle(StepVisual_Colour)& colour = colours[c];
      if (colour.IsNull())
        colour = STEPConstruct_Styles::EncodeColor(Quantity_Color(c[0], c[1], c[2], Quantity_TOC_sRGB));
      for (TopExp_Explorer at(shapes_[i], TopAbs_SOLID); at.More(); at.Next()) {
        const Handle(StepRepr_RepresentationItem) item = STEPConstruct::FindEntity(finder, at.Current());
        if (item.IsNull()) throw std::runtime_error("a solid was not taken over");
        styles.AddStyle(item, styles.MakeColorPSA(item, colour, colour, colour, 0), nullptr);
      }
      add_presentation(styles, styles.FindContext(shapes_[i]));
      styles.ClearStyles();
    }
  }

  void add_presentation(STEPConstruct_Styles& styles, const Handle(StepRepr_RepresentationContext) & context) {
    Handle(StepVisual_MechanicalDesignGeometricPresentationRepresentation) presentation;
    if (!styles.CreateMDGPR(context, presentation)) throw std::runtime_error("a colour was not taken over");
    model_->AddWithRefs(presentation);
  }

  Handle(Interface_HArray1OfHAsciiString) list(const std::vector<std::string>& lines) {
    const int count = std::max<int>(1, static_cast<int>(lines.size()));
    Handle(Interface_HArray1OfHAsciiString) array = new Interface_HArray1OfHAsciiString(1, count);
    array->SetValue(1, text(""));
    for (std::size_t i = 0; i < lines.size(); ++i)
      array->SetValue(static_cast<int>(i) + 1, text(texts_.stand_in(lines[i])));
    return array;
  }

  void fill_header() {
    const StepHeader& header = document_.header();
    APIHeaderSection_MakeHeader head(model_);
    head.SetName(text(texts_.stand_in(header.file_name)));
    head.SetTimeStamp(text(texts_.stand_in(header.time_stamp)));
    head.SetAuthor(list({}));
    head.SetOrganization(list({}));
    head.SetPreprocessorVersion(text(texts_.stand_in(header.originating_system)));
    head.SetOriginatingSystem(text(texts_.stand_in(header.originating_system)));
    head.SetAuthorisation(text(""));
    head.SetDescription(list(header.description));
    // The kernel's own name of the second schema has a stray full stop in it.
    if (schema_ == Schema::ap242) {
      Handle(Interface_HArray1OfHAsciiString) name = new Interface_HArray1OfHAsciiString(1, 1);
      name->SetValue(1, text("AP242_MANAGED_MODEL_BASED_3D_ENGINEERING_MIM_LF { 1 0 10303 442 1 1 4 }"));
      head.SetSchemaIdentifiers(name);
    }
    head.Apply(model_);
  }

  std::string print() {
    StepData_StepWriter out(model_);
    out.SendModel(Handle(StepData_Protocol)::DownCast(session_->Protocol()));
    if (!out.CheckList().IsEmpty(Standard_True)) throw std::runtime_error("the file was not written in full");
    std::ostringstream bytes;
    bytes.imbue(std::locale::classic());
    if (!out.Print(bytes)) throw std::runtime_error("the file was not printed");
    return texts_.put_back(bytes.str());
  }

  const StepDocument& document_;
  Schema schema_;
  Settings settings_;
  Texts texts_;
  Handle(TDocStd_Document) tree_;
  Handle(XSControl_WorkSession) session_;
  Handle(StepData_StepModel) model_;
  std::vector<TopoDS_Shape> shapes_;
  std::vector<TDF_Label> labels_;
  std::vector<std::string> names_, use_names_;
};

}  // namespace

base::Result<std::string> written(const StepDocument& document, Schema schema) {
  // The kernel's exchange keeps its tables and settings in globals.
  static std::mutex one_at_a_time;
  const std::scoped_lock lock(one_at_a_time);
  return guarded("STEP file", "STEP file", [&]() -> base::Result<std::string> {
    STEPCAFControl_Controller::Init();  // the settings do not exist before this
    return Writing(document, schema).file();
  });
}

}  // namespace visewright::kernel
