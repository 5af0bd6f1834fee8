export { adamsEvans, adamsEvansH, adamsEvansLbPerAcre } from './adams-evans.ts';
export { aluminiumCaMgTonnePerHectare, brAlCaMg } from './br-al-camg.ts';
export { baseSaturationTonnePerHectare, brBaseSaturation } from './br-base-saturation.ts';
export { type CochraneResult, cochrane, cochraneMeq, cochraneTonnePerHectare } from './cochrane.ts';
export { type Combined, combine } from './combine.ts';
export { compostBed } from './compost-bed.ts';
export { chartFigure } from './garden-charts.ts';
export { gardenTables } from './garden-tables.ts';
export { implied, impliedByCapacity } from './implied.ts';
export { kamprath, kamprath15 } from './kamprath.ts';
export { type KansasTarget, kansas, kansasLbPerAcre } from './kansas.ts';
export * from './lower/index.ts';
export { mehlich1976, mehlich1976TonnePerHectare } from './mehlich-1976.ts';
export type { EvidenceKind, MethodInput, MethodOutcome, Reading, RequirementMethod } from './method.ts';
export { lowerMethods, methodById, methods } from './methods.ts';
export { type NcSoilClass, ncFactor, ncMehlich, ncMehlichShortTonPerAcre, ncResidualShare } from './nc-mehlich.ts';
export { type NswTarget, nswEcec, nswEcecTonnePerHectare, nswPrintedCell } from './nsw-ecec.ts';
export { osuSikora, osuSikoraShortTonPerAcre } from './osu-sikora.ts';
export { peatMix } from './peat-mix.ts';
export { mcBratney2002, pedotransfer, weaver2004KgPerHectare } from './pedotransfer.ts';
export { printedAllowance, printedRate } from './printed-rate.ts';
export { type PsuTarget, psuLbCcePerAcre, psuMehlich } from './psu-mehlich.ts';
export { psuTurf, psuTurfLbPer1000SqFt } from './psu-turf.ts';
export { curtinTrolove, ptfCurtinTrolove, ptfWong, wong } from './ptf.ts';
export { type ReconcileInput, reconcile } from './reconcile.ts';
export type { Reconciled } from './reconcile-types.ts';
export { type SmpColumn, smpTableAgGround, smpTablePure, smpTableShortTonPerAcre } from './smp-table.ts';
export { smpTristate, type TriStateTarget, triStateShortTonPerAcre } from './smp-tristate.ts';
export { gradeOf, textureOnly } from './texture-only.ts';
export { triStateOrganicShortTonPerAcre, tristateOrganic } from './tristate-organic.ts';
export { equilibriumLbc, equilibriumRatio, lbcRequirement, ugaLbc } from './uga-lbc.ts';
export {
  type UkSoil,
  type UkTargetSoil,
  type UkUse,
  ukFactor,
  ukLimeFactor,
  ukOptimumPh,
  ukSoilOf,
  ukTargetPh,
  ukTonnePerHectare,
} from './uk-factor.ts';
export { mehlichAcidity } from './volume-acidity.ts';
