/**
 * Every rule, listed by hand. Within a kind of joint the order is the order of its tests: a need is told the first
 * that refuses it, so what rules a pair out altogether stands before what is a matter of size.
 */
import type { Rule } from '../rule.ts';
import { cableLength } from './cabling/cable-length.ts';
import { fanHeader } from './cabling/fan-header.ts';
import { frontLead } from './cabling/front-lead.ts';
import { keyboardPlug } from './cabling/keyboard-plug.ts';
import { lightHeader } from './cabling/light-header.ts';
import { lightVoltage } from './cabling/light-voltage.ts';
import { mainsSocket } from './cabling/mains-socket.ts';
import { pointerPlug } from './cabling/pointer-plug.ts';
import { addedCard } from './clearance/added-card.ts';
import { busCardRoom } from './clearance/bus-card.ts';
import { cardHeight } from './clearance/card-height.ts';
import { cardLength } from './clearance/card-length.ts';
import { coolerHeight } from './clearance/cooler-height.ts';
import { driveHeight } from './clearance/drive-height.ts';
import { driveLength } from './clearance/drive-length.ts';
import { memoryHeight } from './clearance/memory-height.ts';
import { nextCard } from './clearance/next-card.ts';
import { processorBoardHeight } from './clearance/processor-board-height.ts';
import { radiatorCard } from './clearance/radiator-card.ts';
import { radiatorMemory } from './clearance/radiator-memory.ts';
import { radiatorStack } from './clearance/radiator-stack.ts';
import { supplyBehindCage } from './clearance/supply-behind-cage.ts';
import { supplyLength } from './clearance/supply-length.ts';
import { airRise } from './cooling/air-rise.ts';
import { caseAirflow } from './cooling/case-airflow.ts';
import { coolerBracket } from './cooling/cooler-bracket.ts';
import { coolerInUse } from './cooling/cooler-in-use.ts';
import { coolerRating } from './cooling/cooler-rating.ts';
import { noCooling } from './cooling/no-cooling.ts';
import { passivePart } from './cooling/passive-part.ts';
import { adapterDirection } from './display/adapter-direction.ts';
import { boardSocketsIdle } from './display/board-sockets-idle.ts';
import { colourDepth } from './display/colour-depth.ts';
import { dualMode } from './display/dual-mode.ts';
import { pictureHeads } from './display/heads.ts';
import { modeChoice } from './display/mode-choice.ts';
import { noPicture } from './display/no-picture.ts';
import { pictureMode } from './display/picture-mode.ts';
import { picturePlug } from './display/picture-plug.ts';
import { pictureSocket } from './display/picture-socket.ts';
import { scanRange } from './display/scan-range.ts';
import { scanRate } from './display/scan-rate.ts';
import { displaySignal } from './display/signal.ts';
import { socketsAlike } from './display/sockets-alike.ts';
import { builtForSale } from './emissions/built-for-sale.ts';
import { classForHome } from './emissions/class-for-home.ts';
import { ownAuthorisation } from './emissions/own-authorisation.ts';
import { busLines } from './expansion/bus-lines.ts';
import { busSlot } from './expansion/bus-slot.ts';
import { busWidth } from './expansion/bus-width.ts';
import { cardSettings } from './expansion/card-settings.ts';
import { cardDriver } from './expansion/driver.ts';
import { laneSharing } from './expansion/lane-sharing.ts';
import { linkWidth } from './expansion/link-width.ts';
import { slotFree } from './expansion/slot-free.ts';
import { slotLength } from './expansion/slot-length.ts';
import { firmwareBootMode } from './firmware/boot-mode.ts';
import { instructionLevel } from './firmware/instruction-level.ts';
import { processorBoardFamily } from './firmware/processor-board-family.ts';
import { processorFamily } from './firmware/processor-family.ts';
import { securityModule } from './firmware/security-module.ts';
import { systemDiskSize } from './firmware/system-disk-size.ts';
import { systemMemory } from './firmware/system-memory.ts';
import { systemStorage } from './firmware/system-storage.ts';
import { bankFill } from './memory/bank-fill.ts';
import { bankModuleSize } from './memory/bank-module-size.ts';
import { bankParity } from './memory/bank-parity.ts';
import { bankPins } from './memory/bank-pins.ts';
import { bankSpeed } from './memory/bank-speed.ts';
import { bankTotal } from './memory/bank-total.ts';
import { bankWidth } from './memory/bank-width.ts';
import { channelBalance } from './memory/channel-balance.ts';
import { errorCorrection } from './memory/error-correction.ts';
import { memoryGeneration } from './memory/generation.ts';
import { memoryPresent } from './memory/memory-present.ts';
import { mixedErrorCorrection } from './memory/mixed-error-correction.ts';
import { mixedModules } from './memory/mixed-modules.ts';
import { moduleSize } from './memory/module-size.ts';
import { memoryRegistered } from './memory/registered.ts';
import { memorySlotsFree } from './memory/slots-free.ts';
import { speedRun } from './memory/speed-run.ts';
import { totalCapacity } from './memory/total-capacity.ts';
import { memoryVoltage } from './memory/voltage.ts';
import { armHoles } from './mounting/arm-holes.ts';
import { armWeight } from './mounting/arm-weight.ts';
import { bayFree } from './mounting/bay-free.ts';
import { boardForm } from './mounting/board-form.ts';
import { casePresent } from './mounting/case-present.ts';
import { driveBay } from './mounting/drive-bay.ts';
import { fanPlaceFree } from './mounting/fan-place-free.ts';
import { fanSize } from './mounting/fan-size.ts';
import { fanTakenOut } from './mounting/fan-taken-out.ts';
import { lifting } from './mounting/lifting.ts';
import { monitorArm } from './mounting/monitor-arm.ts';
import { radiatorPlace } from './mounting/radiator-place.ts';
import { radiatorSize } from './mounting/radiator-size.ts';
import { rearPanel } from './mounting/rear-panel.ts';
import { screws } from './mounting/screws.ts';
import { standoffs } from './mounting/standoffs.ts';
import { standoffsPresent } from './mounting/standoffs-present.ts';
import { standoffsToMove } from './mounting/standoffs-to-move.ts';
import { supplyBay } from './mounting/supply-bay.ts';
import { supplyShape } from './mounting/supply-shape.ts';
import { boardContacts } from './power/board-contacts.ts';
import { boardLead } from './power/board-lead.ts';
import { cardLeads } from './power/card-leads.ts';
import { driveLeads } from './power/drive-leads.ts';
import { excursion } from './power/excursion.ts';
import { mainsSwitch } from './power/mains-switch.ts';
import { mainsVoltage } from './power/mains-voltage.ts';
import { processorLead } from './power/processor-lead.ts';
import { railLoad } from './power/rail-load.ts';
import { senseRating } from './power/sense-rating.ts';
import { separateCardLeads } from './power/separate-card-leads.ts';
import { stripLoad } from './power/strip-load.ts';
import { supplyHeadroom } from './power/supply-headroom.ts';
import { supplyLoad } from './power/supply-load.ts';
import { twoPlugOrder } from './power/two-plug-order.ts';
import { boardPresent } from './socket/board-present.ts';
import { coolerMounting } from './socket/cooler-mounting.ts';
import { coprocessorBuiltIn } from './socket/coprocessor-built-in.ts';
import { coprocessorClock } from './socket/coprocessor-clock.ts';
import { coprocessorPlace } from './socket/coprocessor-place.ts';
import { coprocessorSocket } from './socket/coprocessor-socket.ts';
import { powerStage } from './socket/power-stage.ts';
import { processorBoardPower } from './socket/processor-board-power.ts';
import { processorBoardSocket } from './socket/processor-board-socket.ts';
import { processorOverridden } from './socket/processor-overridden.ts';
import { processorPresent } from './socket/processor-present.ts';
import { processorSocket } from './socket/processor-socket.ts';
import { bootDrive } from './storage/boot-drive.ts';
import { cardLink } from './storage/card-link.ts';
import { diskAddressing } from './storage/disk-addressing.ts';
import { diskDensity } from './storage/disk-density.ts';
import { diskEncoding } from './storage/disk-encoding.ts';
import { disketteFormat } from './storage/diskette-format.ts';
import { disketteWriting } from './storage/diskette-writing.ts';
import { driveKind } from './storage/drive-kind.ts';
import { drivePort } from './storage/drive-port.ts';
import { floppyRate } from './storage/floppy-rate.ts';
import { moduleKey } from './storage/module-key.ts';
import { moduleLength } from './storage/module-length.ts';
import { moduleLink } from './storage/module-link.ts';
import { moduleLinkSpeed } from './storage/module-link-speed.ts';
import { moduleSharesPort } from './storage/module-shares-port.ts';
import { moduleSlotFree } from './storage/module-slot-free.ts';
import { olderStart } from './storage/older-start.ts';
import { partitionTable } from './storage/partition-table.ts';
import { ribbonPositions } from './storage/ribbon-positions.ts';
import { systemDiskettes } from './storage/system-diskettes.ts';

export const rules: readonly Rule[] = [
  processorSocket,
  processorBoardSocket,
  boardPresent,
  processorPresent,
  coolerMounting,
  coolerBracket,
  powerStage,
  processorBoardPower,
  processorOverridden,
  coprocessorSocket,
  coprocessorPlace,
  coprocessorClock,
  coprocessorBuiltIn,
  coolerInUse,
  noCooling,
  coolerRating,
  passivePart,
  caseAirflow,
  airRise,
  memoryGeneration,
  memoryRegistered,
  memoryPresent,
  moduleSize,
  memorySlotsFree,
  totalCapacity,
  speedRun,
  channelBalance,
  bankPins,
  bankModuleSize,
  bankFill,
  bankWidth,
  bankSpeed,
  bankParity,
  bankTotal,
  memoryVoltage,
  errorCorrection,
  mixedErrorCorrection,
  mixedModules,
  busSlot,
  slotLength,
  slotFree,
  linkWidth,
  busWidth,
  busLines,
  cardSettings,
  laneSharing,
  cardDriver,
  moduleKey,
  moduleLength,
  moduleLink,
  moduleSlotFree,
  drivePort,
  moduleLinkSpeed,
  cardLink,
  floppyRate,
  ribbonPositions,
  disketteFormat,
  disketteWriting,
  systemDiskettes,
  diskEncoding,
  diskDensity,
  diskAddressing,
  bootDrive,
  olderStart,
  partitionTable,
  moduleSharesPort,
  driveKind,
  boardForm,
  standoffs,
  standoffsPresent,
  standoffsToMove,
  casePresent,
  rearPanel,
  supplyShape,
  supplyBay,
  driveBay,
  driveHeight,
  driveLength,
  bayFree,
  fanSize,
  fanPlaceFree,
  radiatorSize,
  radiatorStack,
  radiatorMemory,
  radiatorCard,
  radiatorPlace,
  fanTakenOut,
  screws,
  supplyLength,
  supplyBehindCage,
  coolerHeight,
  processorBoardHeight,
  cardLength,
  cardHeight,
  addedCard,
  busCardRoom,
  nextCard,
  memoryHeight,
  boardLead,
  boardContacts,
  processorLead,
  cardLeads,
  senseRating,
  separateCardLeads,
  driveLeads,
  twoPlugOrder,
  supplyLoad,
  supplyHeadroom,
  railLoad,
  excursion,
  mainsVoltage,
  mainsSwitch,
  stripLoad,
  fanHeader,
  frontLead,
  keyboardPlug,
  pointerPlug,
  mainsSocket,
  lightVoltage,
  lightHeader,
  cableLength,
  armHoles,
  armWeight,
  monitorArm,
  displaySignal,
  picturePlug,
  pictureSocket,
  noPicture,
  pictureMode,
  scanRate,
  socketsAlike,
  scanRange,
  modeChoice,
  colourDepth,
  dualMode,
  adapterDirection,
  pictureHeads,
  boardSocketsIdle,
  processorFamily,
  processorBoardFamily,
  firmwareBootMode,
  securityModule,
  systemMemory,
  systemStorage,
  systemDiskSize,
  instructionLevel,
  lifting,
  classForHome,
  ownAuthorisation,
  builtForSale,
];
